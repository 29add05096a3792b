package org.gusset.svg.sheet;

import org.gusset.svg.scene.Role;

/** One line of a label before it is broken to fit: what kind of words, and the words. */
public record LabelLine(Role role, String text) {}
