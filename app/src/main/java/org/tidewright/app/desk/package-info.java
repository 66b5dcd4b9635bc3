/** What the pages ask for, answered from the folder of plans and from husbandry. */
@NullMarked
package org.tidewright.app.desk;

import org.jspecify.annotations.NullMarked;
