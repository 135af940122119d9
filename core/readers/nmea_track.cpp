// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/nmea_track.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace readers {

namespace {

constexpr std::int64_t day_ms = 86'400'000;

} // namespace

NmeaDepths& NmeaTrack::source(std::string_view name) {
    if (const auto at = sourceByName_.find(name); at != sourceByName_.end()) {
        return sources_[at->second];
    }
    NmeaDepths made;
    made.name = name;
    sourceByName_.emplace(made.name, sources_.size());
    return sources_.emplace_back(std::move(made));
}

bool NmeaTrack::hearTime(double timeOfDay_s, std::optional<std::int64_t> date) {
    const std::int64_t since_ms = std::llround(timeOfDay_s * 1000.0);
    if (date && dateOfDay0_) {
        day_ = *date - *dateOfDay0_;
    } else if (now_ms_ && day_ * day_ms + since_ms < *now_ms_ - day_ms / 2) {
        ++day_;
    }
    if (date && !dateOfDay0_) {
        dateOfDay0_ = *date - day_;
    }
    const std::int64_t time_ms = day_ * day_ms + since_ms;
    if (now_ms_ && time_ms < *now_ms_ && time_ms > *now_ms_ - longestGap_ms) {
        return false; // Sentences of one moment may come with times a little out of order.
    }
    moveClock(time_ms);
    return true;
}

void NmeaTrack::tick() {
    isTimed_ = false;
    moveClock(now_ms_.value_or(0) + 1000);
}

void NmeaTrack::moveClock(std::int64_t time_ms) {
    if (now_ms_ && time_ms == *now_ms_) {
        return;
    }
    const bool isForward = now_ms_ && time_ms > *now_ms_;
    closeTick(isForward ? std::optional(time_ms - *now_ms_) : std::nullopt);
    if (!isForward) {
        refuseWaiting();
        fix_.reset();
    }
    now_ms_ = time_ms;
    isVoid_ = false;
}

void NmeaTrack::closeTick(std::optional<std::int64_t> length_ms) {
    if (length_ms && *length_ms <= longestGap_ms) {
        tick_ms_ = *length_ms;
    }
    counts_.resize(sources_.size());
    seen_.resize(sources_.size());
    for (const Depth& depth : heard_) {
        ++counts_[depth.source];
    }
    const bool isGap = length_ms && *length_ms > longestGap_ms;
    for (Depth& depth : heard_) {
        const auto nth = static_cast<std::int64_t>(seen_[depth.source]++);
        const auto of = static_cast<std::int64_t>(counts_[depth.source]);
        if (isVoid_) {
            refuse(depth, "void_fix");
        } else if (!now_ms_ || (isGap && nth > 0)) {
            refuse(depth, "no_position");
        } else {
            depth.time_ms = *now_ms_ + nth * tick_ms_ / of;
            if (fix_ && fix_->time_ms == depth.time_ms) {
                place(depth, *fix_);
            } else {
                waiting_.push_back(depth);
            }
        }
    }
    for (const Depth& depth : heard_) { // Only those: a log may have thousands of sources.
        counts_[depth.source] = 0;
        seen_[depth.source] = 0;
    }
    heard_.clear();
}

void NmeaTrack::hearFix(geo::LonLat place) {
    if (!now_ms_ || isVoid_ || (fix_ && fix_->time_ms == *now_ms_)) {
        return;
    }
    ++fixCount_;
    const Fix after{place, *now_ms_};
    for (const Depth& depth : waiting_) {
        this->place(depth, after);
    }
    waiting_.clear();
    fix_ = after;
}

void NmeaTrack::hearVoidFix() {
    if (fix_ && now_ms_ && fix_->time_ms == *now_ms_) {
        fix_.reset();
    }
    isVoid_ = true;
}

void NmeaTrack::place(const Depth& depth, const Fix& after) {
    geo::LonLat place = after.place;
    if (depth.time_ms != after.time_ms) {
        const bool isBetween = fix_ && after.time_ms - fix_->time_ms <= longestGap_ms &&
                               depth.time_ms >= fix_->time_ms && depth.time_ms < after.time_ms;
        if (!isBetween) {
            refuse(depth, "no_position");
            return;
        }
        const double share = static_cast<double>(depth.time_ms - fix_->time_ms) /
                             static_cast<double>(after.time_ms - fix_->time_ms);
        place.lon_deg = std::lerp(fix_->place.lon_deg, after.place.lon_deg, share);
        place.lat_deg = std::lerp(fix_->place.lat_deg, after.place.lat_deg, share);
    }
    sources_[depth.source].placed.push_back({place, depth.depth_m, depth.time_ms, depth.line});
}

void NmeaTrack::refuse(const Depth& depth, std::string_view reason) {
    NmeaDepths& from = sources_[depth.source];
    from.report.refuse(reason, depth.line, fmt::format("{} {} m", from.name, depth.depth_m));
}

void NmeaTrack::refuseWaiting() {
    for (const Depth& depth : waiting_) {
        refuse(depth, "no_position");
    }
    waiting_.clear();
}

void NmeaTrack::hearDepth(std::string_view name, double depth_m, bool isBelowSurface,
                          std::size_t line, std::string_view text) {
    NmeaDepths& from = source(name);
    ++from.heard;
    from.isBelowSurface = from.isBelowSurface || isBelowSurface;
    if (!now_ms_) {
        from.report.refuse("no_position", line, text);
        return;
    }
    heard_.push_back({static_cast<std::size_t>(&from - sources_.data()), depth_m, 0, line});
}

void NmeaTrack::hearNoDepth(std::string_view name, std::size_t line, std::string_view text) {
    NmeaDepths& from = source(name);
    ++from.heard;
    from.report.refuse("no_depth", line, text);
}

void NmeaTrack::finish() {
    closeTick(tick_ms_);
    refuseWaiting();
}

std::optional<std::int64_t> NmeaTrack::epoch_ms() const {
    if (!dateOfDay0_ || !isTimed_) {
        return std::nullopt;
    }
    return *dateOfDay0_ * day_ms;
}

} // namespace readers
