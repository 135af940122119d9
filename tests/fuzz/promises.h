// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/readers/reading_report.h"
#include "core/readers/soundings_file.h"

namespace fuzz {

/// Ends the process, loudly, where a promise does not hold: a finding for the fuzzer, a failed test
/// for the replay.
void promise(bool holds, const char* what);

/// What a refusal promises: it says what and what to do, on one line that a terminal can show.
void checkRefusal(const base::Error& error);
/// What a report promises: every row is either used or refused for a reason, and quotes are short
/// and printable.
void checkReport(const readers::ReadingReport& report);
/// What soundings promise: finite, on the Earth, not negative, in a time that can be, in passes
/// that ascend, and all rows accounted for.
void checkSoundings(const base::Result<readers::ReadSoundings>& read);
/// A ring of three or more places on the Earth.
void checkRing(const geo::LonLatRing& ring);
void checkPiece(const geo::LonLatPiece& piece);

/// The settings of soundings that one case is read with: the first byte of the case chooses, so
/// that the fuzzer walks through them; the rest is the file.
[[nodiscard]] readers::SoundingFileSettings settingsFor(unsigned char choice);

} // namespace fuzz
