package org.tidewright.twin.system;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Declaration;
import org.tidewright.twin.contract.Stock;

/**
 * What lives or lies in the system and is shared by its waters.
 *
 * @param ground waste that lies between rocks and in sand
 * @param ammoniaOxidisers cells that turn ammonia into nitrite
 * @param nitriteOxidisers cells that turn nitrite into nitrate
 * @param rockPhosphate phosphate on rock and sand
 * @param stomach of all fish
 * @param gut of all fish
 * @param reserve what the fish will burn next
 * @param fish their flesh
 * @param carrion dead animals
 * @param corals reserves of the corals
 * @param coralTissue what the corals have grown since the run began
 * @param turf reserves of what grows on rock and sand by itself
 * @param freeAlgae in the water and on the panes
 * @param skeletons lime that corals and coralline algae laid down
 * @param scale lime that fell out by itself
 */
record Pools(
        Body ground,
        Body ammoniaOxidisers,
        Body nitriteOxidisers,
        Body rockPhosphate,
        Body stomach,
        Body gut,
        Body reserve,
        Body fish,
        Body carrion,
        Body corals,
        Body coralTissue,
        Body turf,
        Body freeAlgae,
        Body skeletons,
        Body scale) {
    static Pools in(Declaration declaration) {
        return new Pools(
                declaration.pool(
                        "waste on the ground", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS),
                declaration.pool("ammonia oxidisers", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON),
                declaration.pool("nitrite oxidisers", Stock.ORGANIC_NITROGEN, Stock.ORGANIC_CARBON),
                declaration.pool("phosphate on rock and sand", Stock.PHOSPHATE, Stock.ALKALINITY),
                declaration.pool(
                        "stomachs of the fish", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS),
                declaration.pool(
                        "guts of the fish", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS),
                declaration.pool("reserves of the fish", Stock.ORGANIC_CARBON),
                declaration.pool("fish", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS),
                declaration.pool(
                        "dead animals", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS),
                declaration.pool("reserves of the corals", Stock.ORGANIC_CARBON),
                declaration.pool(
                        "new tissue of the corals",
                        Stock.ORGANIC_CARBON,
                        Stock.ORGANIC_NITROGEN,
                        Stock.ORGANIC_PHOSPHORUS),
                declaration.pool("reserves of the turf", Stock.ORGANIC_CARBON),
                declaration.pool("free algae", Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS),
                declaration.pool("skeletons", Stock.CALCIUM, Stock.MAGNESIUM, Stock.INORGANIC_CARBON, Stock.ALKALINITY),
                declaration.pool("scale", Stock.CALCIUM, Stock.MAGNESIUM, Stock.INORGANIC_CARBON, Stock.ALKALINITY));
    }
}
