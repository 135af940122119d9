// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/follower.h"

#include <algorithm>
#include <utility>

namespace open_water {

namespace {

constexpr std::chrono::milliseconds interval{2000};
/// Beyond this nobody would wait for it.
constexpr std::chrono::milliseconds longest{120'000};

} // namespace

Follower::Follower(Keeper& keeper, QObject* parent) : QObject(parent), keeper_(keeper) {
    setInterval(interval);
    connect(&timer_, &QTimer::timeout, this, &Follower::look);
}

void Follower::setInterval(std::chrono::milliseconds interval) {
    usual_ = interval;
    timer_.setInterval(interval);
}

void Follower::watch() {
    hadOwner_ = keeper_.owner().has_value();
    hasFailed_ = false;
    timer_.setInterval(usual_);
    keeper_.hasFile() && keeper_.isReadOnly() ? timer_.start() : timer_.stop();
}

void Follower::look() {
    if (!keeper_.unkept().empty()) {
        return;
    }
    const auto changed = keeper_.hasChanged();
    if (!changed) {
        takeFailure(changed.error());
        return;
    }
    const bool isFree = hadOwner_ && !store::ownerOf(keeper_.path().toStdString());
    if (*changed || isFree) {
        emit isToBeOpenedAgain();
    } else if (hasFailed_) {
        watch(); // A file that was away is back as it was.
    }
}

void Follower::takeFailure(const base::Error& error) {
    timer_.setInterval(std::min(2 * timer_.intervalAsDuration(), longest));
    if (!std::exchange(hasFailed_, true)) {
        emit failed(error);
    }
}

} // namespace open_water
