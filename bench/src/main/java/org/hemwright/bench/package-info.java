/** JMH benchmarks; never part of the product. */
@NullMarked
package org.hemwright.bench;

import org.jspecify.annotations.NullMarked;
