// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/looking_back/known_places.h"
#include "app/wording/words.h"
#include "core/logbook/kept_log.h"
#include "core/water/document/water.h"

#include <QStringList>

#include <memory>
#include <optional>
#include <vector>

namespace days::looking_back {

/// The stays of one day that stand one after another in a chunk of the log.
struct DayOfChunk {
    units::Day day{};
    std::size_t first = 0; ///< Among the items of the chunk.
    std::size_t stays = 0;
    std::size_t rows = 0; ///< Stays and runs, without a heading.
};

/// A row of the list of stays and what it stands for.
struct LogRow {
    QStringList cells;    ///< When and where, rods and bait or species, fish or weight.
    logbook::StayId stay; ///< Not given in the heading of a day.
    logbook::FishId run;  ///< Not given in the row of the stay itself.
    [[nodiscard]] bool isHeading() const { return !stay.isGiven(); }
};

/// The rows of a log, latest first: each day has a heading, each stay is followed by its runs. A
/// row is written when it is asked for.
class LogRows {
public:
    LogRows() = default;
    /// \param trip the one day that is to be seen; nothing for all.
    LogRows(std::shared_ptr<const water::Water> water, const wording::Words& words,
            std::optional<units::Day> trip = {});

    [[nodiscard]] std::size_t size() const { return size_; }
    /// \param row below size().
    [[nodiscard]] LogRow operator[](std::size_t row) const;
    [[nodiscard]] bool isHeading(std::size_t row) const;
    /// Where a run stands, or a stay where `run` is not given; nothing where there is none.
    [[nodiscard]] std::optional<std::size_t> rowOf(logbook::StayId stay, logbook::FishId run) const;

private:
    /// Rows of one day in one chunk; the later part of a day that lies in two bears its heading.
    struct Block {
        std::size_t chunk = 0;
        DayOfChunk of;
        std::size_t before = 0; ///< Rows above.
        bool hasHeading = true;
    };
    [[nodiscard]] const Block& blockAt(std::size_t row) const;

    std::shared_ptr<const water::Water> water_;
    wording::Words words_;
    PlaceNames names_;
    std::vector<Block> blocks_; ///< As they are seen, latest first.
    std::size_t size_ = 0;
};

/// The days of all trips, latest first.
[[nodiscard]] std::vector<units::Day> tripDays(const water::Water& water);

} // namespace days::looking_back
