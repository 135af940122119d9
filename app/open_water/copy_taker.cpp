// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/copy_taker.h"

#include <utility>

namespace open_water {

namespace {

constexpr std::chrono::minutes usualInterval{5};

units::Moment momentNow() {
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

} // namespace

CopyTaker::CopyTaker(OpenWater& open, store::Copies copies, QObject* parent)
    : QObject(parent), open_(open), copies_(std::move(copies)) {
    timer_.setInterval(usualInterval);
    connect(&timer_, &QTimer::timeout, this, &CopyTaker::takeIfDue);
    connect(&open_, &OpenWater::opened, this, &CopyTaker::takeIfDue);
    timer_.start();
}

void CopyTaker::takeIfDue() {
    // What is only looked at here is somebody else's to copy.
    if (open_.path().isEmpty() || open_.isReadOnly()) {
        return;
    }
    using Taken = std::optional<store::Copy>;
    runner_.start<Taken>(
        tr("Copying the water"),
        [copies = copies_, path = open_.path().toStdString()](base::Progress&) mutable {
            return copies.takeIfDue(path, momentNow());
        },
        [this](const base::Result<Taken>& copy) {
            const bool isWorth = !copy && copy.error().kind != base::ErrorKind::cancelled &&
                                 copy.error().kind != base::ErrorKind::waterInUse;
            if (isWorth && !std::exchange(hasFailed_, true)) {
                base::Error error = copy.error();
                error.what = "no copy of the water could be taken: " + error.what;
                emit open_.failed(error);
            }
            if (copy && *copy) {
                hasFailed_ = false;
                emit taken();
            }
        },
        jobs::JobRunner::Earlier::finished);
}

} // namespace open_water
