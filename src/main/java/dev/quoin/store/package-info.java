/** The run folder: the only package that writes files. */
package dev.quoin.store;
