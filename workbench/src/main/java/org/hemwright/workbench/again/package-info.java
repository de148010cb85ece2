/**
 * What a command answered last, so that the same question of an unchanged folder is answered at
 * once.
 *
 * <p>Every command is a pure function of the program, the folder and the words it was asked in;
 * {@link org.hemwright.workbench.again.Question} is a hash over all three. An {@link
 * org.hemwright.workbench.again.Answer} holds what was said and the hash of every file that was
 * made; it is told again only under the same question, only as it was written, and only while every
 * file still stands where it was put, byte for byte. So nothing is told that would come out
 * otherwise, and deleting what is kept costs time alone.
 *
 * <p>The hashes are against damage, not against malice: who can write in the folder can write a
 * false answer, as they can write a false pattern.
 *
 * <p>Open {@link org.hemwright.workbench.again.Answers} first.
 */
@NullMarked
package org.hemwright.workbench.again;

import org.jspecify.annotations.NullMarked;
