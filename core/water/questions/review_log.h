// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/hour_rates.h"
#include "core/rates/rate.h"
#include "core/units/moment.h"
#include "core/units/weight.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace water {

/// What to sort the log by.
enum class ReviewBy {
    section,
    zone,
    band,
    hour,
    bait,
    wind,
    month,
    mark,
    temperature, ///< Of the water.
    daysSince,   ///< Since the place was last fished.
};

inline constexpr std::array allReviewBy{
    ReviewBy::section, ReviewBy::zone,  ReviewBy::band, ReviewBy::hour,        ReviewBy::bait,
    ReviewBy::wind,    ReviewBy::month, ReviewBy::mark, ReviewBy::temperature, ReviewBy::daysSince};

/// "section", "zone" ... "days_since".
[[nodiscard]] std::string_view nameOf(ReviewBy by);
[[nodiscard]] std::optional<ReviewBy> reviewByNamed(std::string_view name);

/// The question to the log.
struct ReviewQuestion {
    ReviewBy by = ReviewBy::section;
    std::optional<units::Day> from;
    std::optional<units::Day> to;
    std::string species; ///< Empty: all.
    std::optional<units::Weight> leastWeight;
    std::optional<logbook::Season> season; ///< Of any year, by the day on which a stay began.
    std::string bait; ///< Stays that fished it, maybe among others, any case; empty: all.
    friend bool operator==(const ReviewQuestion&, const ReviewQuestion&) = default;
};

/// Whether a stay is asked about: by its day, season and bait.
[[nodiscard]] bool isAskedAbout(const logbook::Stay& stay, const ReviewQuestion& question,
                                const units::Clock& clock);
/// Whether a run is one of those that count: landed, of the species and weight.
[[nodiscard]] bool counts(const logbook::Fish& run, const ReviewQuestion& question);

/// Effort and catch by what is asked. Groups by place (section, zone, band) need `derived` up to
/// Step::sections; stays that fished no such place are counted as "plain bottom", "deeper than the
/// limit" or "elsewhere". \return wrongUse for dates the wrong way round, or where what is needed
/// is not derived; cancelled.
[[nodiscard]] base::Result<rates::RateTable> reviewLog(const Water& water, const Derived& derived,
                                                       const ReviewQuestion& question,
                                                       base::Progress& progress);

/// The rate over the day.
[[nodiscard]] base::Result<rates::HourRates>
reviewHours(const Water& water, const ReviewQuestion& question, base::Progress& progress);

} // namespace water
