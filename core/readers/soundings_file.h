// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/readers/reading_report.h"
#include "core/soundings/sounding.h"
#include "core/units/moment.h"
#include "core/units/temperature.h"

#include <optional>
#include <string>
#include <vector>

namespace readers {

enum class DepthUnit { metres, feet, fathoms };

/// "m", "ft", "fathom".
[[nodiscard]] std::string nameOf(DepthUnit unit);
[[nodiscard]] std::optional<DepthUnit> depthUnitNamed(const std::string& name);
[[nodiscard]] units::Depth depthOf(double amount, DepthUnit unit);

/// Which columns of a text file hold what: by name (capitals do not matter) or by number from 1.
/// Empty: guessed.
struct ColumnChoice {
    std::string x;
    std::string y;
    std::string depth;
    std::string time;
    friend bool operator==(const ColumnChoice&, const ColumnChoice&) = default;
};

/// What the user may say about a file of soundings. Everything is guessed where nothing is said.
struct SoundingFileSettings {
    ColumnChoice columns;
    /// Unit of the depths. Absent: metres, or what the column's name says (depth_ft). NMEA carries
    /// its own.
    std::optional<DepthUnit> unit;
    /// Reference system of the coordinates by EPSG number. Absent: degrees, or what the file says.
    std::optional<int> epsg;
    std::optional<char> decimalMark; ///< '.' or ','.
    std::optional<char> separator;   ///< ',', ';', tab, blank.
    std::optional<bool> hasHeader;
    /// Which of several depths: an NMEA source ("SDDPT"), an element of GPX extensions, a field of
    /// a vector file, or "ele" (negative elevation), "name", "desc" for GPX. Empty: the richest.
    std::string depthSource;
    units::Clock clock; ///< What times without a zone mean.
    /// A place at the water, where one is known: tells longitude from latitude when they are
    /// swapped.
    std::optional<geo::LonLat> near;
    friend bool operator==(const SoundingFileSettings&, const SoundingFileSettings&) = default;
};

enum class SoundingFileKind { nmea, gpx, table, b12, vector, grid };

/// "NMEA 0183 log", "GPX track", "text table", "B-12 soundings", "vector file", "depth grid".
[[nodiscard]] std::string nameOf(SoundingFileKind kind);

/// From where down the shown depths count, as far as the file tells.
enum class DepthReference { unknown, belowTransducer, belowSurface };

/// One source of depth in the file and how many it gave.
struct DepthSource {
    std::string name; ///< "SDDPT", "depth".
    std::size_t count = 0;
    friend bool operator==(const DepthSource&, const DepthSource&) = default;
};

/// What a file of soundings gave, in track order.
struct ReadSoundings {
    SoundingFileKind kind = SoundingFileKind::table;
    std::vector<soundings::Sounding> soundings;
    /// Position of the first sounding of each pass, ascending; the first is 0; empty without
    /// soundings.
    std::vector<std::size_t> passStarts;
    std::optional<units::Temperature> waterTemperature; ///< Mean of what the log shows.
    DepthReference reference = DepthReference::unknown;
    std::vector<DepthSource> depthSources; ///< All found, richest first.
    std::string depthSource;               ///< The one taken.
    ReadingReport report;
};

/// No water on the Earth is deeper; what shows more is no depth in metres.
inline constexpr double deepestOnEarth_m = 11000.0;

/// A break in the track begins a new pass: more than this time, or, without times, this distance.
inline constexpr double passGap_s = 10.0;
inline constexpr double passGap_m = 60.0;

/// Position of the first sounding of each pass by gaps in time and place; `alsoAt` are breaks that
/// the file itself marks.
[[nodiscard]] std::vector<std::size_t>
passStartsOf(const std::vector<soundings::Sounding>& soundings,
             const std::vector<std::size_t>& alsoAt = {});

} // namespace readers
