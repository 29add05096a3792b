package org.gusset.dsl.syntax;

/** The four sides of the page. */
public enum Direction {
    UP,
    DOWN,
    LEFT,
    RIGHT
}
