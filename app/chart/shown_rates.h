// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"
#include "core/water/questions/review_log.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace chart {

/// What the log gave, by place, to be seen on the chart. A value.
struct ShownRates {
    water::ReviewBy by = water::ReviewBy::section; ///< Section or zone.
    rates::RateTable table;
    /// The steadied rate of a place by its row's name; what is to be expected of an untried one
    /// where it has no row.
    [[nodiscard]] std::optional<rates::Rate> of(const std::string& name) const;
    /// Whether anything was fished there.
    [[nodiscard]] bool isTried(const std::string& name) const;
    /// The highest steadied rate, at which the shade is deepest; 0 where there is none.
    [[nodiscard]] double most() const;
};

/// How sure a rate is, for its texture: by how far half its interval reaches, as a share of it.
/// Our choice (no source).
enum class Sureness {
    sure,   ///< To within a half.
    rough,  ///< To within itself.
    hardly, ///< Not even that.
};
[[nodiscard]] Sureness surenessOf(const rates::Rate& rate);

/// Whether a stay of the log is to be seen, which it is where nothing else is asked.
[[nodiscard]] inline bool isSeen(const logbook::Stay& stay,
                                 const std::optional<water::ReviewQuestion>& asked,
                                 const units::Clock& clock) {
    return !asked || water::isAskedAbout(stay, *asked, clock);
}
/// The runs of it that are to be seen: all of them where no kind of fish is asked for.
[[nodiscard]] std::vector<const logbook::Fish*>
runsSeen(const logbook::Stay& stay, const std::optional<water::ReviewQuestion>& asked);

} // namespace chart
