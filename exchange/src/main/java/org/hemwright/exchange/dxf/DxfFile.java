package org.hemwright.exchange.dxf;

/** One file that was written. */
@SuppressWarnings("ArrayRecordComponent")
public record DxfFile(String name, byte[] bytes) {}
