// SPDX-License-Identifier: Apache-2.0
/** What another kind of event could have shown in place of the true one, with its size, length and place free. */
package cablewright.lessons.lookalike;
