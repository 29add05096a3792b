package org.gusset.core.build;

/** What words can show: an amount, a word, or a yes or no. */
public sealed interface Shown permits Len, Num, Ang, Area, Truth, Word {}
