// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/remove_weed_note.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/notes.h"

namespace edits {

void removeWeedNote(open_water::OpenWater& open, weed::WeedNoteId id) {
    act(open, wording::Tongue::tr("Remove weed note"),
        [&](const water::Water& water) { return acts::removeWeedNote(water, id); });
}

} // namespace edits
