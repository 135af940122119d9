// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/reading_report.h"
#include "core/water/document/water.h"
#include "core/water/steps/known_stays.h"

#include <vector>

namespace water {

/// Stays brought in from a table, a track or another water, told by what the log holds already.
struct LogBroughtIn {
    /// A stay at a time at which the log has the boat elsewhere.
    struct Doubtful {
        logbook::Stay stay;
        logbook::StayId meets;
        std::size_t row = 0; ///< Line of the file; 0 for a track.
    };
    logbook::Log stays;      ///< To be added: those that are new, and those that update one.
    std::size_t updates = 0; ///< How many of them update a stay of the log.
    std::size_t known = 0;   ///< Stays in the file that the log holds already.
    std::vector<Doubtful> doubtful;
    readers::ReadingReport report;
};

/// Sorts stays by how they stand to the log and to those before them.
class StaySorter {
public:
    enum class From {
        log,   ///< A table, or another water: what it says goes before what was noted.
        track, ///< Says nothing but times and place, which the user may have put right since.
    };
    /// \param next above all numbers that stays come with.
    StaySorter(const Water& water, From from, Sharing sharing, std::int64_t next);

    /// \param row of the file; 0 where it has none.
    void take(logbook::Stay stay, std::size_t row, LogBroughtIn& brought);
    [[nodiscard]] const KnownStays& known() const { return known_; }

private:
    void giveIds(logbook::Stay& stay, bool isUpdate);

    KnownStays known_;
    From from_;
    std::int64_t next_;
};

/// Sorts all stays of another log. \return cancelled.
[[nodiscard]] base::Result<LogBroughtIn> sortStays(const Water& water, logbook::Log stays,
                                                   Sharing sharing, std::int64_t next,
                                                   base::Progress& progress);

} // namespace water
