// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/lattice_survey.h"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

#include <fmt/format.h>

namespace support {

namespace {

constexpr double step_m = 0.4;
constexpr double spacing_m = 20.0;
constexpr double west_deg = 10.0;
constexpr double south_deg = 52.0;
constexpr double metresPerDegree = 111200.0;
constexpr std::size_t perSecond = 5;

double lonAt(double x_m) {
    return west_deg + x_m / (metresPerDegree * std::cos(south_deg * M_PI / 180.0));
}

double latAt(double y_m) {
    return south_deg + y_m / metresPerDegree;
}

/// A ripple of a centimetre or two that is the same in every run.
double noiseAt(std::size_t index) {
    const auto mixed = static_cast<std::uint32_t>(index * 2654435761ULL);
    return (static_cast<double>(mixed >> 8U) / 16777216.0 - 0.5) * 0.06;
}

std::string clockAt(std::size_t index) {
    const std::size_t second = index / perSecond;
    return fmt::format("{:02}{:02}{:02}.{:02}", second / 3600 % 24, second / 60 % 60, second % 60,
                       index % perSecond * (100 / perSecond));
}

std::string degreesMinutes(double degrees, int width) {
    const double whole = std::floor(degrees);
    return fmt::format("{:0{}.0f}{:09.6f}", whole, width, (degrees - whole) * 60.0);
}

void putSentence(std::string& out, std::string_view body) {
    unsigned sum = 0;
    for (const char c : body) {
        sum ^= static_cast<unsigned char>(c);
    }
    fmt::format_to(std::back_inserter(out), "${}*{:02X}\r\n", body, sum);
}

/// Writes row after row through a buffer, so that the making of the files costs little.
template <typename Row>
void writeRows(const std::filesystem::path& path, std::size_t count, std::string buffer, Row row) {
    std::ofstream file(path, std::ios::binary);
    for (std::size_t i = 0; i < count; ++i) {
        row(buffer, i);
        if (buffer.size() > 1'000'000) {
            file << buffer;
            buffer.clear();
        }
    }
    file << buffer;
}

} // namespace

LatticeSurvey::LatticeSurvey(std::size_t soundings)
    : soundings_(soundings),
      side_m_(std::sqrt(static_cast<double>(soundings) / 2.0 * step_m * spacing_m)) {}

std::vector<geo::LonLatPiece> LatticeSurvey::shore() const {
    const double far_m = side_m_ + 2.0 * spacing_m;
    geo::LonLatPiece square;
    square.outer = {{lonAt(-spacing_m), latAt(-spacing_m)},
                    {lonAt(far_m), latAt(-spacing_m)},
                    {lonAt(far_m), latAt(far_m)},
                    {lonAt(-spacing_m), latAt(far_m)}};
    return {square};
}

std::vector<soundings::Sounding> LatticeSurvey::soundings() const {
    const units::Moment start{std::chrono::sys_days(std::chrono::year(2026) / 6 / 1)};
    std::vector<soundings::Sounding> all;
    for (std::size_t i = 0; i < soundings_; ++i) {
        const Shown shown = at(i);
        all.push_back({{shown.lon_deg, shown.lat_deg},
                       units::Depth::metres(shown.depth_m),
                       start + std::chrono::milliseconds(i * (1000 / perSecond))});
    }
    return all;
}

std::vector<std::size_t> LatticeSurvey::passStarts() const {
    std::vector<std::size_t> starts;
    double before = -1.0;
    for (std::size_t i = 0; i < soundings_; ++i) {
        if (const double line = lineOf(i); line != before) {
            starts.push_back(i);
            before = line;
        }
    }
    return starts;
}

double LatticeSurvey::lineOf(std::size_t index) const {
    const std::size_t half = soundings_ / 2;
    const bool isEastward = index < half;
    const double along_m = static_cast<double>(isEastward ? index : index - half) * step_m;
    return std::floor(along_m / side_m_) + (isEastward ? 0.0 : 1e6);
}

LatticeSurvey::Shown LatticeSurvey::at(std::size_t index) const {
    const std::size_t half = soundings_ / 2;
    const bool isEastward = index < half;
    const double along_m = static_cast<double>(isEastward ? index : index - half) * step_m;
    const double line = std::floor(along_m / side_m_);
    double run_m = along_m - line * side_m_;
    if (std::fmod(line, 2.0) != 0.0) {
        run_m = side_m_ - run_m;
    }
    const double x_m = isEastward ? run_m : line * spacing_m;
    const double y_m = isEastward ? line * spacing_m : run_m;
    const double depth_m = 6.0 + 3.0 * std::sin(x_m / 130.0) * std::cos(y_m / 170.0);
    return {lonAt(x_m), latAt(y_m), depth_m + noiseAt(index)};
}

void LatticeSurvey::writeLog(const std::filesystem::path& path) const {
    writeRows(path, soundings_, {}, [this](std::string& out, std::size_t i) {
        const Shown shown = at(i);
        const std::size_t day = 1 + i / (86400 * perSecond);
        putSentence(out, fmt::format("GPRMC,{},A,{},N,{},E,1.6,90.0,{:02}0626,,,A", clockAt(i),
                                     degreesMinutes(shown.lat_deg, 2),
                                     degreesMinutes(shown.lon_deg, 3), day));
        putSentence(out, fmt::format("SDDPT,{:.2f},0.30", shown.depth_m));
    });
}

void LatticeSurvey::writeTable(const std::filesystem::path& path) const {
    writeRows(path, soundings_, "lon,lat,depth_m,time\n", [this](std::string& out, std::size_t i) {
        const Shown shown = at(i);
        const std::string clock = clockAt(i);
        fmt::format_to(std::back_inserter(out), "{:.8f},{:.8f},{:.2f},2026-06-{:02}T{}:{}:{}Z\n",
                       shown.lon_deg, shown.lat_deg, shown.depth_m, 1 + i / (86400 * perSecond),
                       clock.substr(0, 2), clock.substr(2, 2), clock.substr(4));
    });
}

} // namespace support
