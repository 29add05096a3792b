// Starts the language server for drafts. Everything else is the server's: see docs/how-to/editor.md.
"use strict";

const fs = require("fs");
const path = require("path");
const vscode = require("vscode");
const { LanguageClient, TransportKind } = require("vscode-languageclient/node");

const NAME = "gusset-language-server";
let client;

/** The script that starts the server: the one that is set, or the one beside this folder. */
function script() {
  const set = vscode.workspace.getConfiguration("gusset").get("server");
  return set || path.join(__dirname, "..", NAME);
}

exports.activate = async function activate() {
  const command = script();
  if (!fs.existsSync(command)) {
    vscode.window.showWarningMessage(
      `There is no ${NAME} at ${command}. Say where it is in the setting gusset.server; until then drafts have colours alone.`
    );
    return;
  }
  const settings = vscode.workspace.getConfiguration("gusset");
  const options = Object.fromEntries(["measures", "body", "unit", "values", "delay"].map((name) => [name, settings.get(name)]));
  client = new LanguageClient(
    "gusset",
    "Gusset drafts",
    { command: "sh", args: [command], transport: TransportKind.stdio },
    {
      documentSelector: [{ language: "gusset" }],
      initializationOptions: options,
      synchronize: { configurationSection: "gusset" },
    }
  );
  await client.start();
};

exports.deactivate = function deactivate() {
  return client ? client.stop() : undefined;
};
