// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/soundings/lead_line.h"
#include "core/water/document/water.h"
#include "core/weed/weed_note.h"

#include <vector>

namespace acts {

/// Adds soundings by lead line, each with a fresh id; those that the water has already are left
/// out, so that a file brought in twice doubles nothing.
[[nodiscard]] base::Result<water::Water>
addLeadLine(const water::Water& water, std::vector<soundings::LeadLineSounding> soundings);
/// Puts the sounding in the place of the one with its id. \return wrongUse where there is none.
[[nodiscard]] base::Result<water::Water>
changeLeadLine(const water::Water& water, const soundings::LeadLineSounding& sounding);
/// \return wrongUse where there is no such sounding.
[[nodiscard]] base::Result<water::Water> removeLeadLine(const water::Water& water,
                                                        soundings::LeadLineId id);

/// Adds notes of weed, each with a fresh id; those that the water has already are left out.
[[nodiscard]] base::Result<water::Water> addWeedNotes(const water::Water& water,
                                                      std::vector<weed::WeedNote> notes);
/// \return wrongUse where there is no such note.
[[nodiscard]] base::Result<water::Water> removeWeedNote(const water::Water& water,
                                                        weed::WeedNoteId id);

} // namespace acts
