// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/sounding_collector.h"

#include "core/base/number_text.h"
#include "core/geo/water_frame.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace readers {

namespace {

/// Receivers that never had a fix count on from 6 January 1980; two-digit years come out as 1980 or
/// 2080.
constexpr std::chrono::sys_days firstDay{std::chrono::year{1981} / 1 / 1};
constexpr std::chrono::sys_days lastDay{std::chrono::year{2080} / 1 / 1};

bool isPlausible(units::Moment time) {
    return time >= firstDay && time < lastDay;
}

std::string rowText(const RawSounding& row) {
    return fmt::format("{} {} depth {}", base::exactText(row.x_deg), base::exactText(row.y_deg),
                       base::exactText(row.depth_m));
}

double middleOf(std::vector<double> values) {
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
        rows_.push_back({row, line});
    }
}

void SoundingCollector::breakTrack() {
    if (!rows_.empty() && (breaks_.empty() || breaks_.back() != rows_.size())) {
        breaks_.push_back(rows_.size());
    }
}

void SoundingCollector::turnElevations() {
    const auto below = std::ranges::count_if(rows_, [](const Row& r) { return r.raw.depth_m < 0; });
    const auto above = std::ranges::count_if(rows_, [](const Row& r) { return r.raw.depth_m > 0; });
    if (below > 9 * above && below > 0) {
        read_.report.notes.push_back(fmt::format(
            "{} of {} depths are negative: taken as heights, so that the sign was turned", below,
            rows_.size()));
        for (Row& row : rows_) {
            row.raw.depth_m = 0.0 - row.raw.depth_m;
        }
    }
}

void SoundingCollector::turnSwapped(const SoundingFileSettings& settings) {
    if (rows_.empty()) {
        return;
    }
    const auto beyond =
        std::ranges::count_if(rows_, [](const Row& r) { return std::fabs(r.raw.y_deg) > 90.0; });
    bool isSwapped = static_cast<std::size_t>(beyond) * 2 > rows_.size();
    if (!isSwapped && settings.near && beyond == 0) {
        std::vector<double> xs;
        std::vector<double> ys;
        for (const Row& row : rows_) {
            xs.push_back(row.raw.x_deg);
            ys.push_back(row.raw.y_deg);
        }
        const geo::LonLat asGiven{middleOf(std::move(xs)), middleOf(std::move(ys))};
        const geo::LonLat turned{asGiven.lat_deg, asGiven.lon_deg};
        constexpr double far_km = 50.0;
        isSwapped = geo::isOnEarth(turned) &&
                    geo::courseBetween(*settings.near, asGiven).distance.inKilometres() > far_km &&
                    geo::courseBetween(*settings.near, turned).distance.inKilometres() < far_km;
    }
    if (isSwapped) {
        read_.report.notes.emplace_back(
            "longitude and latitude were swapped in the file; they were turned round");
        for (Row& row : rows_) {
            std::swap(row.raw.x_deg, row.raw.y_deg);
        }
    }
}

void SoundingCollector::moveOver() {
    std::vector<std::size_t> breaks;
    auto nextBreak = breaks_.begin();
    read_.soundings.reserve(rows_.size());
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (nextBreak != breaks_.end() && *nextBreak == i) {
            breaks.push_back(read_.soundings.size());
            ++nextBreak;
        }
        const RawSounding& raw = rows_[i].raw;
        const geo::LonLat place{raw.x_deg, raw.y_deg};
        if (!geo::isOnEarth(place)) {
            read_.report.refuse("off_earth", rows_[i].line, rowText(raw));
        } else if (raw.depth_m < 0.0) {
            read_.report.refuse("negative_depth", rows_[i].line, rowText(raw));
        } else {
            read_.soundings.push_back({place, units::Depth::metres(raw.depth_m), raw.time});
        }
    }
    rows_ = {};
    read_.passStarts = passStartsOf(read_.soundings, breaks);
    read_.report.used = read_.soundings.size();
}

void SoundingCollector::noteOddDepths() {
    std::vector<double> depths_m;
    for (const soundings::Sounding& sounding : read_.soundings) {
        depths_m.push_back(sounding.shown.inMetres());
    }
    // Few stillwaters that are fished from a rowing boat have half of their soundings below 60 m.
    constexpr double oddMiddle_m = 60.0;
    const double middle_m = middleOf(std::move(depths_m));
    if (middle_m > oddMiddle_m) {
        read_.report.notes.push_back(fmt::format(
            "half of the depths are more than {} m: if the file is in feet, choose feet "
            "as its unit",
            base::fixedText(middle_m, 0)));
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
    moveOver();
    if (read_.soundings.empty()) {
        return std::unexpected(nothingUsable(positions, depths));
    }
    noteOddDepths();
    return std::move(read_);
}

} // namespace readers
