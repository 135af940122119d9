// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/soundings/sounding.h"

#include <cstddef>
#include <filesystem>
#include <vector>

namespace support {

/// A made-up survey: a square water sounded along lines 20 m apart in both directions, five
/// soundings a second, 0.4 m from one to the next. The water grows with the number of soundings, so
/// that there are as many crossings to the thousand at every size.
class LatticeSurvey {
public:
    explicit LatticeSurvey(std::size_t soundings);

    /// The square, a little larger than the lines.
    [[nodiscard]] std::vector<geo::LonLatPiece> shore() const;

    /// As they come from its log, and the first of each line.
    [[nodiscard]] std::vector<soundings::Sounding> soundings() const;
    [[nodiscard]] std::vector<std::size_t> passStarts() const;

    /// An NMEA 0183 log: RMC and DPT by turns, so that it has two rows for each sounding.
    void writeLog(const std::filesystem::path& path) const;

    /// The same soundings as lon,lat,depth_m,time, for a program that reads tables.
    void writeTable(const std::filesystem::path& path) const;

private:
    struct Shown {
        double lon_deg = 0.0;
        double lat_deg = 0.0;
        double depth_m = 0.0;
    };
    [[nodiscard]] Shown at(std::size_t index) const;
    /// Another number for each line.
    [[nodiscard]] double lineOf(std::size_t index) const;

    std::size_t soundings_;
    double side_m_;
};

} // namespace support
