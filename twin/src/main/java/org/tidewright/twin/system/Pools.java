package org.tidewright.twin.system;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Declaration;

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
        Body turf,
        Body freeAlgae,
        Body skeletons,
        Body scale) {
    static Pools in(Declaration declaration) {
        return new Pools(
                declaration.body("waste on the ground"),
                declaration.body("ammonia oxidisers"),
                declaration.body("nitrite oxidisers"),
                declaration.body("phosphate on rock and sand"),
                declaration.body("stomachs of the fish"),
                declaration.body("guts of the fish"),
                declaration.body("reserves of the fish"),
                declaration.body("fish"),
                declaration.body("dead animals"),
                declaration.body("reserves of the corals"),
                declaration.body("reserves of the turf"),
                declaration.body("free algae"),
                declaration.body("skeletons"),
                declaration.body("scale"));
    }
}
