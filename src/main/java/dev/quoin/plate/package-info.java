/** Groups, plates and placement: which item lies in which slot, and where that is in the field. */
package dev.quoin.plate;
