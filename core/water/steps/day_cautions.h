// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <optional>
#include <vector>

namespace water {

/// No list of cautions is longer: what comes after the seventh is not read.
inline constexpr std::size_t mostCautions = 7;
/// From this force on a small open boat stays ashore; from one less it keeps to sheltered water
/// (common practice, no source).
inline constexpr int ashoreFrom_beaufort = 6;
/// Water below this is cold (RNLI).
inline constexpr units::Temperature coldWater = units::Temperature::celsius(15.0);
/// Still water below this may carry ice at its margins (ours).
inline constexpr units::Temperature nearIce = units::Temperature::celsius(4.0);
/// Above this some fish die of being caught (ours, a degree below the 21 C that a newspaper's
/// report of an Environment Agency scheme of 2019 and a University of Hull review quoted by an
/// angling association give for pike).
inline constexpr units::Temperature warmForFish = units::Temperature::celsius(20.0);

/// What is said before all else from force 6 on, by the strongest wind of the hours planned;
/// nothing below it, or of a wind that nobody said.
[[nodiscard]] std::optional<StayAshore> ashoreCaution(const marks::ExpectedDay& day);
/// The wind's own caution: none below force 5; where nobody said how strong it will be, that.
[[nodiscard]] std::optional<DayCaution> windCaution(const marks::ExpectedDay& day);
/// The cold's own caution; none where the water is known not to be cold. \param water absent:
/// nobody measured it.
[[nodiscard]] std::optional<ColdWater> coldCaution(const std::optional<units::Temperature>& water);

/// What can kill on such a day, the gravest first, each once and at most mostCautions: wind, cold
/// water, thunder, darkness, ropes and anchors. Cold water below 15 C, floating first: RNLI
/// (second-hand). Scope 6 to 10: RYA teaching of 6 to 1 with rope and chain (second-hand) and US
/// state boater courses; never by the stern alone: the same courses. The rest is common practice
/// (no source).
[[nodiscard]] std::vector<DayCaution> dayCautions(const PlannedDay& planned);

/// The rules of this water as far as they bear on the day: season, rods, closed water, and the
/// house's own notes.
[[nodiscard]] std::vector<DayRule> rulesOfTheDay(const Water& water, const PlannedDay& planned);

/// What the fish need to live: handling (fisheries' leaflets on pike: kept wet, a short time in the
/// air) and warm water.
[[nodiscard]] std::vector<FishCare> fishCare(const PlannedDay& planned);

} // namespace water
