/** One use case a command; the only package that knows the order of the stages. */
package dev.quoin.job;
