// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_weed_note.h"

#include "app/edits/change_water.h"

namespace edits {

void removeWeedNote(open_water::OpenWater& open, weed::WeedNoteId id) {
    change(
        open, QObject::tr("Remove weed note"), {water::Part::weedNotes}, [id](water::Water& water) {
            std::erase_if(water.weedNotes.edit(), [id](const auto& note) { return note.id == id; });
        });
}

} // namespace edits
