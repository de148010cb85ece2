package org.hemwright.draft.syntax;

/** A name as written. */
public record Name(String text, Span span) {}
