// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/sounding_collector.h"

#include "core/base/number_text.h"
#include "core/geo/water_frame.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

namespace readers {

namespace {

using soundings::Sounding;

/// Receivers that never had a fix count on from 6 January 1980; two-digit years come out as 1980 or
/// 2080.
constexpr std::chrono::sys_days firstDay{std::chrono::year{1981} / 1 / 1};
constexpr std::chrono::sys_days lastDay{std::chrono::year{2080} / 1 / 1};

bool isPlausible(units::Moment time) {
    return time >= firstDay && time < lastDay;
}

std::string rowText(const Sounding& row) {
    return fmt::format("{} {} depth {}", base::exactText(row.place.lon_deg),
                       base::exactText(row.place.lat_deg), base::exactText(row.shown.inMetres()));
}

/// Leaves the values in another order.
double middleOf(std::vector<double>& values) {
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    return *half;
}

} // namespace

void SoundingCollector::take(const RawSounding& row, std::size_t line, std::string_view text) {
    if (!std::isfinite(row.depth_m) || !std::isfinite(row.x_deg) || !std::isfinite(row.y_deg)) {
        read_.report.refuse("not_a_number", line, text);
    } else if (std::fabs(row.depth_m) > deepestOnEarth_m) {
        read_.report.refuse("impossible_depth", line, text);
    } else if (row.x_deg == 0.0 && row.y_deg == 0.0) {
        read_.report.refuse("zero_position", line, text);
    } else if (std::fabs(row.x_deg) > 180.0 || std::fabs(row.y_deg) > 180.0) {
        read_.report.refuse("off_earth", line, text);
    } else if (row.time && !isPlausible(*row.time)) {
        read_.report.refuse("impossible_time", line, text);
    } else {
        constexpr std::size_t last = std::numeric_limits<std::uint32_t>::max();
        read_.soundings.push_back(
            {{row.x_deg, row.y_deg}, units::Depth::metres(row.depth_m), row.time});
        lines_.push_back(static_cast<std::uint32_t>(std::min(line, last)));
    }
}

void SoundingCollector::breakTrack() {
    const std::size_t at = read_.soundings.size();
    if (at > 0 && (breaks_.empty() || breaks_.back() != at)) {
        breaks_.push_back(at);
    }
}

void SoundingCollector::turnElevations() {
    std::vector<Sounding>& rows = read_.soundings;
    const units::Depth surface;
    const auto below =
        std::ranges::count_if(rows, [=](const Sounding& row) { return row.shown < surface; });
    const auto above =
        std::ranges::count_if(rows, [=](const Sounding& row) { return row.shown > surface; });
    if (below > 9 * above && below > 0) {
        read_.report.notes.push_back(fmt::format(
            "{} of {} depths are negative: taken as heights, so that the sign was turned", below,
            rows.size()));
        for (Sounding& row : rows) {
            row.shown = units::Depth::metres(0.0 - row.shown.inMetres());
        }
    }
}

geo::LonLat SoundingCollector::middlePlace() const {
    std::vector<double> values(read_.soundings.size());
    std::ranges::transform(read_.soundings, values.begin(),
                           [](const Sounding& row) { return row.place.lon_deg; });
    const double x_deg = middleOf(values);
    std::ranges::transform(read_.soundings, values.begin(),
                           [](const Sounding& row) { return row.place.lat_deg; });
    return {x_deg, middleOf(values)};
}

void SoundingCollector::turnSwapped(const SoundingFileSettings& settings) {
    std::vector<Sounding>& rows = read_.soundings;
    if (rows.empty()) {
        return;
    }
    const auto beyond = std::ranges::count_if(
        rows, [](const Sounding& row) { return std::fabs(row.place.lat_deg) > 90.0; });
    bool isSwapped = static_cast<std::size_t>(beyond) * 2 > rows.size();
    if (!isSwapped && settings.near && beyond == 0) {
        const geo::LonLat asGiven = middlePlace();
        const geo::LonLat turned{asGiven.lat_deg, asGiven.lon_deg};
        constexpr double far_km = 50.0;
        isSwapped = geo::isOnEarth(turned) &&
                    geo::courseBetween(*settings.near, asGiven).distance.inKilometres() > far_km &&
                    geo::courseBetween(*settings.near, turned).distance.inKilometres() < far_km;
    }
    if (isSwapped) {
        read_.report.notes.emplace_back(
            "longitude and latitude were swapped in the file; they were turned round");
        for (Sounding& row : rows) {
            std::swap(row.place.lon_deg, row.place.lat_deg);
        }
    }
}

void SoundingCollector::dropImpossible() {
    std::vector<Sounding>& rows = read_.soundings;
    std::vector<std::size_t> breaks;
    auto nextBreak = breaks_.begin();
    std::size_t kept = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (nextBreak != breaks_.end() && *nextBreak == i) {
            breaks.push_back(kept);
            ++nextBreak;
        }
        if (!geo::isOnEarth(rows[i].place)) {
            read_.report.refuse("off_earth", lines_[i], rowText(rows[i]));
        } else if (rows[i].shown < units::Depth()) {
            read_.report.refuse("negative_depth", lines_[i], rowText(rows[i]));
        } else {
            rows[kept++] = rows[i];
        }
    }
    rows.resize(kept);
    lines_ = {};
    read_.passStarts = passStartsOf(rows, breaks);
    read_.report.used = kept;
}

void SoundingCollector::noteOddDepths() {
    // Few stillwaters that are fished from a rowing boat have half of their soundings below 60 m.
    constexpr double oddMiddle_m = 60.0;
    const auto deep = std::ranges::count_if(
        read_.soundings, [](const Sounding& row) { return row.shown.inMetres() > oddMiddle_m; });
    if (static_cast<std::size_t>(deep) * 2 > read_.soundings.size()) {
        std::vector<double> depths_m(read_.soundings.size());
        std::ranges::transform(read_.soundings, depths_m.begin(),
                               [](const Sounding& row) { return row.shown.inMetres(); });
        read_.report.notes.push_back(fmt::format(
            "half of the depths are more than {} m: if the file is in feet, choose feet "
            "as its unit",
            base::fixedText(middleOf(depths_m), 0)));
    }
}

base::Error SoundingCollector::nothingUsable(std::size_t positions, std::size_t depths) const {
    base::Error error{base::ErrorKind::unusableInput, {}, where_, {}};
    const std::string kind = nameOf(read_.kind);
    if (read_.report.read == 0 && positions == 0 && depths == 0) {
        error.what = fmt::format("the {} has no position and no depth", kind);
        error.whatToDo = "choose the file that was recorded while sounding";
    } else if (depths == 0) {
        error.what = fmt::format("the {} has {} positions but no depth", kind, positions);
        error.whatToDo =
            "record with the sounder switched on and sending its depth, or choose where "
            "the depth stands";
    } else if (positions == 0) {
        error.what = fmt::format("the {} has {} depths but no position", kind, depths);
        error.whatToDo = "record with the positions too, or choose where they stand";
    } else {
        error.what =
            fmt::format("none of the {} rows of the {} can be used", read_.report.read, kind);
        error.whatToDo = "choose the columns, the unit and the reference system that the file has";
    }
    if (!read_.report.refused.empty()) {
        error.what += ": " + read_.report.refusedText();
    }
    return error;
}

base::Result<ReadSoundings> SoundingCollector::finish(const SoundingFileSettings& settings,
                                                      std::size_t positions, std::size_t depths) {
    turnElevations();
    turnSwapped(settings);
    dropImpossible();
    if (read_.soundings.empty()) {
        return std::unexpected(nothingUsable(positions, depths));
    }
    noteOddDepths();
    return std::move(read_);
}

} // namespace readers
