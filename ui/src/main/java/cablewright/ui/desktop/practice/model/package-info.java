/** View models of Practice: what is shown and what each action does, without controls. */
package cablewright.ui.desktop.practice.model;
