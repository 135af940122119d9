// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/shared_list.h"
#include "core/base/typed_id.h"
#include "core/soundings/gauge.h"
#include "core/soundings/sounder.h"
#include "core/soundings/sounding.h"
#include "core/units/temperature.h"

#include <cstddef>
#include <optional>
#include <string>

namespace soundings {

using SurveyDayId = base::TypedId<struct SurveyDayKind>;

/// One day's soundings as shown, with what was true that day. Reading order is track order. A copy
/// shares what is long.
struct SurveyDay {
    SurveyDayId id;
    std::string name;   ///< "2026-09-05" or the file's stem.
    std::string source; ///< File name the soundings came from, without folder.
    Sounder sounder;
    Gauge gauge; ///< Unknown level: tied to the other days through crossings, or taken as chart
                 ///< level.
    std::optional<units::Temperature> waterTemperature;
    /// Added to the day's reduced depths because the crossings with other days ask for it and the
    /// user agreed; positive is deeper.
    std::optional<units::Length> agreedOffset;
    /// How much later its positions are than its depths, as the crossings ask for and the user
    /// agreed; positive moves each sounding onward along its pass. Seconds, -30 to 30.
    std::optional<double> agreedDelay_s;
    base::SharedList<Sounding> soundings;
    /// Position of the first sounding of each pass (a stretch sailed without a break), ascending;
    /// the first is 0.
    base::SharedList<std::size_t> passStarts;
    /// Positions of soundings that the user set aside by hand, ascending.
    base::SharedList<std::size_t> setAsideByHand;
    /// Positions of soundings that the user took back although a rule set them aside, ascending.
    base::SharedList<std::size_t> keptByHand;
    friend bool operator==(const SurveyDay&, const SurveyDay&) = default;
};

} // namespace soundings
