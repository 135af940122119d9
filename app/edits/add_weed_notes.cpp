// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_weed_notes.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/notes.h"

namespace edits {

void addWeedNotes(open_water::OpenWater& open, std::vector<weed::WeedNote> notes) {
    act(open, wording::Tongue::tr("Note weed"),
        [&](const water::Water& water) { return acts::addWeedNotes(water, std::move(notes)); });
}

} // namespace edits
