// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_rows.h"

#include "app/days/looking_back/log_view.h"
#include "app/wording/tongue.h"
#include "core/base/made_of_chunks.h"

#include <algorithm>
#include <ranges>

namespace days::looking_back {

using logbook::Stay;
using wording::Words;

namespace {

using DaysOfChunk = std::vector<DayOfChunk>;

DaysOfChunk daysIn(std::span<const Stay> stays, const units::Clock& clock) {
    DaysOfChunk days;
    for (std::size_t i = 0; i < stays.size(); ++i) {
        const units::Day day = clock.dayOf(stays[i].start);
        if (days.empty() || days.back().day != day) {
            days.push_back({day, i, 0, 0});
        }
        ++days.back().stays;
        days.back().rows += 1 + stays[i].runs.size();
    }
    return days;
}

/// By chunk, oldest first. Of the log asked about last only what has changed since is looked
/// through again. For the window's thread alone.
std::vector<std::shared_ptr<const DaysOfChunk>> daysOf(const water::Water& water) {
    struct Last {
        units::Clock clock;
        base::MadeOfChunks<Stay, DaysOfChunk> ofChunks;
    };
    static Last last;
    if (!(water.clock == last.clock)) {
        last.ofChunks.forget();
        last.clock = water.clock;
    }
    return last.ofChunks.of(
        water.log, [&water](std::span<const Stay> stays) { return daysIn(stays, water.clock); });
}

QString clockTime(units::Moment moment, const units::Clock& clock) {
    return QString::fromStdString(units::timeOfDayText(moment, clock));
}

LogRow headingRow(units::Day day) {
    return {{Words::day(day), QString(), QString()}, {}, {}};
}

LogRow stayRow(const Stay& stay, const water::Water& water, const QString& where) {
    QString when = QStringLiteral("%1–%2").arg(clockTime(stay.start, water.clock),
                                               clockTime(stay.end, water.clock));
    if (!where.isEmpty()) {
        when += QStringLiteral("  ") + where;
    }
    // The column is called "Rods, bait".
    QString how = stay.rods ? QString::number(*stay.rods) : QStringLiteral("?");
    if (!stay.bait.empty()) {
        how += QStringLiteral(", ") + QString::fromStdString(stay.bait);
    }
    const int fish = stay.fishCount();
    return {{when, how,
             fish == 0 ? wording::Tongue::tr("blank") : wording::Tongue::tr("%1 fish").arg(fish)},
            stay.id,
            {}};
}

LogRow runRow(const Stay& stay, const logbook::Fish& run, const units::Clock& clock,
              const Words& words) {
    const QString what = run.landed ? (run.species.empty() ? wording::Tongue::tr("fish")
                                                           : QString::fromStdString(run.species))
                                    : wording::Tongue::tr("lost run");
    return {{QStringLiteral("      %1  %2")
                 .arg(run.time ? clockTime(*run.time, clock) : QStringLiteral("–"), what),
             QString::fromStdString(run.bait.empty() ? stay.bait : run.bait),
             run.weight ? words.weight(*run.weight) : QString()},
            stay.id,
            run.id};
}

} // namespace

LogRows::LogRows(std::shared_ptr<const water::Water> water, const Words& words,
                 std::optional<units::Day> trip)
    : water_(std::move(water)), words_(words), names_(*water_) {
    const auto chunks = daysOf(*water_);
    std::optional<units::Day> above;
    for (std::size_t chunk = chunks.size(); chunk-- > 0;) {
        for (const DayOfChunk& of : *chunks[chunk] | std::views::reverse) {
            if (trip && of.day != *trip) {
                continue;
            }
            const bool hasHeading = above != of.day;
            blocks_.push_back({chunk, of, size_, hasHeading});
            size_ += of.rows + (hasHeading ? 1 : 0);
            above = of.day;
        }
    }
}

const LogRows::Block& LogRows::blockAt(std::size_t row) const {
    return *(std::ranges::upper_bound(blocks_, row, {}, &Block::before) - 1);
}

bool LogRows::isHeading(std::size_t row) const {
    const Block& block = blockAt(row);
    return block.hasHeading && row == block.before;
}

LogRow LogRows::operator[](std::size_t row) const {
    const Block& block = blockAt(row);
    if (isHeading(row)) {
        return headingRow(block.of.day);
    }
    std::size_t left = row - block.before - (block.hasHeading ? 1 : 0);
    const auto stays =
        water_->log.chunks()[block.chunk]->items().subspan(block.of.first, block.of.stays);
    for (const Stay& stay : stays | std::views::reverse) {
        if (left == 0) {
            return stayRow(stay, *water_, names_.of(stay.place, words_));
        }
        if (left <= stay.runs.size()) {
            return runRow(stay, stay.runs[left - 1], water_->clock, words_);
        }
        left -= 1 + stay.runs.size();
    }
    return {};
}

std::optional<std::size_t> LogRows::rowOf(logbook::StayId stay, logbook::FishId run) const {
    const auto position = water_ ? logbook::positionOf(water_->log, stay) : std::nullopt;
    if (!position) {
        return std::nullopt;
    }
    const auto [chunk, item] = water_->log.placeOf(*position);
    const auto block = std::ranges::find_if(blocks_, [chunk, item](const Block& each) {
        return each.chunk == chunk && item >= each.of.first && item < each.of.first + each.of.stays;
    });
    if (block == blocks_.end()) {
        return std::nullopt; // Of another trip.
    }
    const auto stays = water_->log.chunks()[chunk]->items();
    std::size_t row = block->before + (block->hasHeading ? 1 : 0);
    for (std::size_t later = item + 1; later < block->of.first + block->of.stays; ++later) {
        row += 1 + stays[later].runs.size();
    }
    if (!run.isGiven()) {
        return row;
    }
    const auto& runs = stays[item].runs;
    const auto found = std::ranges::find(runs, run, &logbook::Fish::id);
    return found == runs.end()
               ? std::nullopt
               : std::optional(row + 1 + static_cast<std::size_t>(found - runs.begin()));
}

std::vector<units::Day> tripDays(const water::Water& water) {
    std::vector<units::Day> days;
    const auto chunks = daysOf(water);
    for (const auto& chunk : chunks | std::views::reverse) {
        for (const DayOfChunk& of : *chunk | std::views::reverse) {
            if (days.empty() || days.back() != of.day) {
                days.push_back(of.day);
            }
        }
    }
    return days;
}

} // namespace days::looking_back
