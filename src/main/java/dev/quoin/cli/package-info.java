/** Commands, printing, progress, exit status. The only package that prints. */
package dev.quoin.cli;
