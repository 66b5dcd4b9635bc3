package org.tidewright.twin.system;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Declaration;

/**
 * The world around a system, which gives and takes and keeps count.
 *
 * @param mains power from the socket
 * @param house heat of the building's own heating and cooling
 * @param outdoors weather and outdoor air
 * @param oxygenInAir oxygen that the room's air gives; it never runs short
 * @param life oxygen breathed, less what plants gave back
 * @param people who breathe in the room
 * @param store what the keeper adds: food, salts, fresh water, animals
 * @param waste what the keeper takes out: old water, foam, harvest, spent media
 * @param floor what runs over a rim
 */
public record World(
        Body mains,
        Body house,
        Body outdoors,
        Body oxygenInAir,
        Body life,
        Body people,
        Body store,
        Body waste,
        Body floor) {
    /** Declares them. */
    static World in(Declaration declaration) {
        return new World(
                declaration.outside("mains"),
                declaration.outside("house"),
                declaration.outside("outdoors"),
                declaration.outside("oxygen in the air"),
                declaration.outside("life"),
                declaration.outside("people"),
                declaration.outside("store"),
                declaration.outside("waste"),
                declaration.outside("floor"));
    }
}
