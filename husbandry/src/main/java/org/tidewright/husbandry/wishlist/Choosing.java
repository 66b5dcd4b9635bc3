package org.tidewright.husbandry.wishlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;

/**
 * Who of those that have not come may come, in the order of the list: each that may counts as a companion of those after it. Those
 * in quarantine count as companions of all.
 */
final class Choosing {
    private final Map<String, Animals> coming = new LinkedHashMap<>();
    private final Map<String, Readiness> ready = new LinkedHashMap<>();
    private final Map<String, ArrivalStudy.Refused> refused = new LinkedHashMap<>();

    Choosing(WishList list, Household household, Community community, LogMatch match) {
        List<Animals> company = new ArrayList<>(community.residents());
        Map<String, WishLine> awaited = new LinkedHashMap<>();
        List<String> ids = list.ids();
        for (int i = 0; i < ids.size(); i++) {
            Past past = match.of(ids.get(i));
            Animals animals = list.lines().get(i).animals();
            if (past instanceof Past.Awaited) {
                awaited.put(ids.get(i), list.lines().get(i));
            } else if (past instanceof Past.InBox) {
                coming.put(ids.get(i), animals);
                company.add(animals);
            }
        }
        match.guests().forEach((id, guest) -> {
            coming.put(id, guest.animals());
            company.add(guest.animals());
        });
        choose(awaited, household, company);
    }

    /** Once more for those who were refused, since one that comes later in the list may be whom they wait for. */
    private void choose(Map<String, WishLine> awaited, Household household, List<Animals> company) {
        int before;
        do {
            before = ready.size();
            awaited.forEach((id, line) -> {
                if (!ready.containsKey(id)) {
                    judge(id, line, household, company);
                }
            });
        } while (ready.size() > before);
    }

    private void judge(String id, WishLine line, Household household, List<Animals> company) {
        List<Readiness.Companion> chosen = new ArrayList<>();
        ready.keySet().forEach(other -> {
            Animals animals = coming.get(other);
            if (animals != null) {
                chosen.add(new Readiness.Companion(other, animals));
            }
        });
        Readiness found = Readiness.of(line.animals(), household, company, chosen);
        if (found.refused()) {
            refused.put(id, new ArrivalStudy.Refused(id, line, found.verdict()));
        } else {
            refused.remove(id);
            ready.put(id, found);
            coming.put(id, line.animals());
        }
    }

    /** Refuses one after all. */
    void refuse(ArrivalStudy.Refused late) {
        ready.remove(late.id());
        coming.remove(late.id());
        refused.put(late.id(), late);
    }

    /** How one that may come is ready; null for others. */
    @Nullable
    Readiness ready(String id) {
        return ready.get(id);
    }

    /** Those who may come and those in quarantine. */
    Map<String, Animals> coming() {
        return coming;
    }

    List<ArrivalStudy.Refused> refused() {
        return List.copyOf(refused.values());
    }
}
