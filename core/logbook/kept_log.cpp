// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/kept_log.h"

#include <algorithm>
#include <ranges>

namespace logbook {

namespace {

using Chunk = base::Chunk<Stay>;
using Stays = std::span<const Stay>;

/// Beyond so many it is cheaper to lay the whole log anew.
constexpr std::size_t mostPutInOneByOne = 64;

template <class Make>
std::uint64_t workedOut(const Chunk& chunk, OfChunk what, const Make& make) {
    return chunk.workedOutOnce(static_cast<std::size_t>(what), [&make](Stays stays) {
        return static_cast<std::uint64_t>(make(stays));
    });
}

std::int64_t leastStayId(const Chunk& chunk) {
    return static_cast<std::int64_t>(workedOut(chunk, OfChunk::leastStayId, [](Stays stays) {
        return std::ranges::min(stays, {}, &Stay::id).id.number();
    }));
}

std::int64_t greatestStayId(const Chunk& chunk) {
    return static_cast<std::int64_t>(workedOut(chunk, OfChunk::greatestStayId, [](Stays stays) {
        return std::ranges::max(stays, {}, &Stay::id).id.number();
    }));
}

std::int64_t greatestId(const Chunk& chunk) {
    return static_cast<std::int64_t>(workedOut(chunk, OfChunk::greatestId, [](Stays stays) {
        std::int64_t greatest = 0;
        for (const Stay& stay : stays) {
            greatest = std::max(greatest, stay.id.number());
            for (const Fish& run : stay.runs) {
                greatest = std::max(greatest, run.id.number());
            }
        }
        return greatest;
    }));
}

auto orderOf(const Stay& stay) {
    return std::pair(stay.start, stay.id);
}

bool isInOrder(const Chunk& chunk) {
    constexpr std::int64_t yes = 1;
    constexpr std::int64_t no = 2; // a zero would be worked out each time
    return workedOut(chunk, OfChunk::order, [](Stays stays) {
               return std::ranges::is_sorted(stays, {}, orderOf) ? yes : no;
           }) == yes;
}

/// Into a log that is in order.
void putIn(KeptLog& log, Stay stay) {
    const auto positions = std::views::iota(std::size_t(0), log.size());
    const auto after = std::ranges::partition_point(
        positions, [&](std::size_t i) { return orderOf(log[i]) <= orderOf(stay); });
    log.insert(static_cast<std::size_t>(after - positions.begin()), std::move(stay));
}

} // namespace

std::optional<std::size_t> positionOf(const KeptLog& log, StayId id) {
    for (std::size_t i = 0; i < log.chunks().size(); ++i) {
        const Chunk& chunk = *log.chunks()[i];
        if (id.number() < leastStayId(chunk) || id.number() > greatestStayId(chunk)) {
            continue;
        }
        const auto found = std::ranges::find(chunk.items(), id, &Stay::id);
        if (found != chunk.items().end()) {
            return log.positionOf({i, static_cast<std::size_t>(found - chunk.items().begin())});
        }
    }
    return std::nullopt;
}

std::int64_t greatestIdIn(const KeptLog& log) {
    std::int64_t greatest = 0;
    for (const auto& chunk : log.chunks()) {
        greatest = std::max(greatest, greatestId(*chunk));
    }
    return greatest;
}

bool isInOrder(const KeptLog& log) {
    const Stay* last = nullptr;
    for (const auto& chunk : log.chunks()) {
        const Stays stays = chunk->items();
        if ((last != nullptr && orderOf(stays.front()) < orderOf(*last)) || !isInOrder(*chunk)) {
            return false;
        }
        last = &stays.back();
    }
    return true;
}

void putInOrder(KeptLog& log, Log stays) {
    if (stays.size() > mostPutInOneByOne || !isInOrder(log)) {
        Log all = log.copied();
        std::ranges::move(stays, std::back_inserter(all));
        sortByTime(all);
        log = KeptLog(std::move(all));
        return;
    }
    for (Stay& stay : stays) {
        putIn(log, std::move(stay));
    }
}

void replace(KeptLog& log, std::size_t position, Stay stay) {
    log.edit(position) = stay;
    if (!isInOrder(log)) {
        log.erase(position);
        putInOrder(log, {std::move(stay)});
    }
}

std::size_t rowsOf(const base::Chunk<Stay>& chunk) {
    return workedOut(chunk, OfChunk::rows, [](Stays stays) {
        std::size_t rows = stays.size();
        for (const Stay& stay : stays) {
            rows += stay.runs.size();
        }
        return static_cast<std::int64_t>(rows);
    });
}

} // namespace logbook
