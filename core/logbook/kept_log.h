// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/shared_chunks.h"
#include "core/logbook/trip.h"

#include <optional>

namespace logbook {

/// The log that a water holds: every stay, by start, then by id. A stay changed among thousands
/// costs no more than one among ten: the others are shared with the log before.
using KeptLog = base::SharedChunks<Stay>;

/// What is worked out once for each chunk of a log, each in its own place there.
enum class OfChunk : std::size_t { effort, order, leastStayId, greatestStayId, greatestId, rows };

/// Where the stay stands; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> positionOf(const KeptLog& log, StayId id);
/// The greatest id that a stay or a fish of it has; 0 where there is none.
[[nodiscard]] std::int64_t greatestIdIn(const KeptLog& log);
[[nodiscard]] bool isInOrder(const KeptLog& log);

/// Puts stays where they belong by start and id, and the others too where they are out of order.
void putInOrder(KeptLog& log, Log stays);
/// Puts `stay` in the place of the one at `position`, and then where it belongs.
void replace(KeptLog& log, std::size_t position, Stay stay);

/// Stays and runs, one a row.
[[nodiscard]] std::size_t rowsOf(const base::Chunk<Stay>& chunk);

} // namespace logbook
