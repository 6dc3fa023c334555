// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.circuit;

/**
 * One method for each kind of element.
 *
 * @param <T> what each method returns
 */
public interface ElementVisitor<T> {

    /** Visits a length of line. @param element the element @return the visitor's answer */
    T line(Element.Line element);

    /** Visits a series element. @param element the element @return the visitor's answer */
    T series(Element.Series element);

    /** Visits a shunt element. @param element the element @return the visitor's answer */
    T shunt(Element.Shunt element);

    /** Visits a full break. @param element the element @return the visitor's answer */
    T lineBreak(Element.Break element);

    /** Visits a full contact. @param element the element @return the visitor's answer */
    T contact(Element.Contact element);

    /** Visits a branch. @param element the element @return the visitor's answer */
    T branch(Element.Branch element);

    /** Visits a divider. @param element the element @return the visitor's answer */
    T divider(Element.Divider element);

    /** Visits a stretch shared with a neighbour. @param element the element @return the visitor's answer */
    T split(Element.Split element);
}
