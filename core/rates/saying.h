// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/hour_rates.h"

#include <string>
#include <variant>
#include <vector>

namespace rates {

// What a page of the log comes to, as values: where most is to be expected, where too little was
// tried to tell, what the hours say, what to try next. The sentences are made by app/wording.

/// Nothing that counts was logged in the time asked for.
struct NothingCounted {
    friend bool operator==(const NothingCounted&, const NothingCounted&) = default;
};
/// Effort without a fish.
struct NoFishYet {
    double rodHours = 0.0;
    double high = 0.0; ///< Fish per 10 rod-hours that the water may still hold, 95 %.
    friend bool operator==(const NoFishYet&, const NoFishYet&) = default;
};
/// The whole of it, where there is only one row to speak of.
struct WholeRate {
    Rate rate;
    double rodHours = 0.0;
    friend bool operator==(const WholeRate&, const WholeRate&) = default;
};
/// The row of which most is to be expected.
struct MostExpected {
    std::string name;
    Rate expected;               ///< Steadied.
    double timesWhole = 1.0;     ///< Over the rate of the whole water.
    bool isBeyondChance = false; ///< It differs from the rest by more than chance would make it.
    friend bool operator==(const MostExpected&, const MostExpected&) = default;
};
/// Rows of which a blank says next to nothing: less than one fish was to be expected.
struct TooLittleTried {
    std::vector<std::string> untried; ///< Without any effort, in the order of the table.
    std::vector<std::string> names;   ///< With some, in the order of the table.
    std::size_t rows = 0;             ///< That one can go to, of the whole table.
    double shareOfEffort = 0.0;       ///< Of all of them.
    friend bool operator==(const TooLittleTried&, const TooLittleTried&) = default;
};
/// What the hours of the day say.
struct HoursSay {
    HourSpan best; ///< From and to are one where no hour stands out.
    Rate atBest;
    int trips = 0;
    friend bool operator==(const HoursSay&, const HoursSay&) = default;
};
/// The row where going once tells most and may bring most.
struct TryNext {
    std::string name;
    Rate expected;               ///< Steadied.
    double rodHours = 0.0;       ///< Spent on it.
    double rodHoursToTell = 0.0; ///< That one fish would be expected of at the whole water's rate.
    friend bool operator==(const TryNext&, const TryNext&) = default;
};
/// So few days that a good one makes a rate.
struct FewDays {
    std::size_t days = 0;
    friend bool operator==(const FewDays&, const FewDays&) = default;
};
/// Stays that count in no rate, since their rods or their length are not known.
struct EffortUnknown {
    std::size_t stays = 0;
    friend bool operator==(const EffortUnknown&, const EffortUnknown&) = default;
};

using Saying = std::variant<NothingCounted, NoFishYet, WholeRate, MostExpected, TooLittleTried,
                            HoursSay, TryNext, FewDays, EffortUnknown>;

} // namespace rates
