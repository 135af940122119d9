// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/logbook/trip.h"
#include "core/water/document/water.h"
#include "core/water/steps/known_stays.h"
#include "core/water/steps/place_photographs.h"

#include <functional>

namespace acts {

/// Adds stays with their runs to the log in the order given, each under its own number where no
/// other stay has it, else under a fresh one, as water::KnownStays tells: one that is known is left
/// out, one that says more of a stay of the log updates it, so that what is brought in twice
/// doubles neither catch nor effort; a doubtful one is left out.
[[nodiscard]] base::Result<water::Water> addStays(const water::Water& water, logbook::Log stays,
                                                  water::Sharing sharing = {});

/// Changes one stay of the log, its runs included; a run without an id gets a fresh one.
/// \return wrongUse where there is no such stay.
[[nodiscard]] base::Result<water::Water>
changeStay(const water::Water& water, logbook::StayId id,
           const std::function<void(logbook::Stay&)>& changeOne);

/// Takes a stay and its runs out of the log. \return wrongUse where there is no such stay.
[[nodiscard]] base::Result<water::Water> removeStay(const water::Water& water, logbook::StayId id);

/// Puts photographs to the stays and fish that they belong to; others are passed over.
[[nodiscard]] base::Result<water::Water>
addPhotographs(const water::Water& water, const std::vector<water::PlacedPhotograph>& photographs);

} // namespace acts
