// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/trip.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace rates {

/// The group of stays of which nobody noted what is asked for.
inline constexpr std::string_view notNoted = "not noted";

/// A stay, or a part of one, put into a group. Valid as long as the log stands unchanged.
struct GroupedStay {
    const logbook::Stay* stay = nullptr;
    std::string group;
    double rodHours = 0.0; ///< Effort that falls in the group; 0 where the rods are not known.
    std::vector<const logbook::Fish*> runs; ///< Runs that fall in it, landed and lost.
};

/// The stay with all its effort and runs in one group (a section, a mark, a zone, a band).
[[nodiscard]] GroupedStay wholeStay(const logbook::Stay& stay, std::string group);

/// Blocks of the day by the water's clock: "06-08". A stay over several blocks gives each the
/// effort spent and the runs met in it; one of which some run has no time, as a whole, `notNoted`.
/// \param hours of a block; 1, 2, 3, 4, 6, 8 or 12.
[[nodiscard]] std::vector<GroupedStay> byHour(std::span<const logbook::Stay> log,
                                              const units::Clock& clock, int hours = 2);
/// The name of the block that holds a moment.
[[nodiscard]] std::string hourBlock(units::Moment moment, const units::Clock& clock, int hours = 2);

/// By bait, small letters. A stay that names several ("perch, smelt") gives each an equal part of
/// its effort; a bait that only a fish names counts among them.
[[nodiscard]] std::vector<GroupedStay> byBait(std::span<const logbook::Stay> log);

/// By where the wind came from, in eighths: "NE"; "calm" below half a knot, "not noted".
[[nodiscard]] std::vector<GroupedStay> byWind(std::span<const logbook::Stay> log);
[[nodiscard]] std::string windEighth(units::Bearing from);

/// By month of the start: "October".
[[nodiscard]] std::vector<GroupedStay> byMonth(std::span<const logbook::Stay> log,
                                               const units::Clock& clock);

/// By the temperature of the water, in steps of 3 degrees: "9 to 12 °C"; "not noted".
[[nodiscard]] std::vector<GroupedStay> byTemperature(std::span<const logbook::Stay> log);

/// The groups of byWind, byMonth and byTemperature in their own order, for RateSettings::order.
[[nodiscard]] std::vector<std::string> windOrder();
[[nodiscard]] std::vector<std::string> monthOrder();
[[nodiscard]] std::vector<std::string> temperatureOrder();

} // namespace rates
