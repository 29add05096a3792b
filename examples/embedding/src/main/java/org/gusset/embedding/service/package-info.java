/** Made to measure over HTTP. */
@NullMarked
package org.gusset.embedding.service;

import org.jspecify.annotations.NullMarked;
