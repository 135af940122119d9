// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_weed_notes.h"

#include "app/edits/change_water.h"

#include <algorithm>

namespace edits {

void addWeedNotes(open_water::OpenWater& open, std::vector<weed::WeedNote> notes) {
    std::int64_t id = water::freshId(*open.water());
    change(open, QObject::tr("Note weed"), {water::Part::weedNotes}, [&](water::Water& water) {
        for (weed::WeedNote& note : notes) {
            note.id = {};
            const bool isKnown =
                std::ranges::any_of(water.weedNotes, [&note](weed::WeedNote other) {
                    other.id = {};
                    return other == note;
                });
            if (!isKnown) {
                note.id = weed::WeedNoteId(id++);
                water.weedNotes.edit().push_back(note);
            }
        }
    });
}

} // namespace edits
