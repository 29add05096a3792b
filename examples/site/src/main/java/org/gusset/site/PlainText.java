package org.gusset.site;

import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** The words of Markdown without its marks. */
final class PlainText extends AbstractVisitor {
    private final StringBuilder words = new StringBuilder();

    private PlainText() {}

    /** The words of a node and all in it, with single blanks. */
    static String of(Node node) {
        PlainText text = new PlainText();
        node.accept(text);
        return text.words.toString().replaceAll("\\s+", " ").strip();
    }

    @Override
    public void visit(Text text) {
        words.append(text.getLiteral());
    }

    @Override
    public void visit(Code code) {
        words.append(code.getLiteral());
    }

    @Override
    public void visit(FencedCodeBlock block) {
        words.append(' ').append(block.getLiteral()).append(' ');
    }

    @Override
    public void visit(IndentedCodeBlock block) {
        words.append(' ').append(block.getLiteral()).append(' ');
    }

    @Override
    public void visit(SoftLineBreak blank) {
        words.append(' ');
    }

    @Override
    public void visit(HardLineBreak blank) {
        words.append(' ');
    }

    @Override
    public void visit(Paragraph paragraph) {
        visitChildren(paragraph);
        words.append(' ');
    }

    @Override
    public void visit(ListItem item) {
        visitChildren(item);
        words.append(' ');
    }

    @Override
    public void visit(CustomNode node) {
        visitChildren(node);
        if (node instanceof TableCell) {
            words.append(' ');
        }
    }
}
