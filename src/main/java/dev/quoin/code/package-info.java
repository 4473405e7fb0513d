/** Bar codes and matrix codes as areas. */
package dev.quoin.code;
