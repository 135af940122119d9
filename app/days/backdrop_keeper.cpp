// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/backdrop_keeper.h"

#include "app/chart/chart_painter.h"
#include "app/days/chart_link.h"
#include "app/edits/change_water.h"

#include <algorithm>
#include <cmath>

namespace days {

namespace {

constexpr int rest_ms = 250;
constexpr double beyondSight = 0.25;  // of the view's size, on each side
constexpr double coarsestShown = 1.7; // pixels of the view for one of the backdrop
constexpr double finestShown = 0.45;

/// The window for a view, a little wider than it.
gdal::PictureWindow windowFor(const chart::ViewFrame& view) {
    gdal::PictureWindow window;
    window.pixel_m = 1.0 / view.pixelsPerMetre();
    const double wide = 1.0 + 2.0 * beyondSight;
    window.cols = std::max(1, static_cast<int>(std::ceil(view.size().width() * wide)));
    window.rows = std::max(1, static_cast<int>(std::ceil(view.size().height() * wide)));
    const geo::WaterPoint corner =
        view.toWater({-beyondSight * view.size().width(), -beyondSight * view.size().height()});
    window.west_m = corner.x_m;
    window.north_m = corner.y_m;
    return window;
}

bool isEnough(const gdal::PictureWindow& window, const chart::ViewFrame& view) {
    const geo::Box sight = view.box();
    const double share = window.pixel_m * view.pixelsPerMetre();
    const geo::Box held{window.west_m, window.north_m - window.rows * window.pixel_m,
                        window.west_m + window.cols * window.pixel_m, window.north_m};
    return share <= coarsestShown && share >= finestShown &&
           held.holds({sight.west_m, sight.north_m}) && held.holds({sight.east_m, sight.south_m});
}

} // namespace

BackdropKeeper::BackdropKeeper(DayContext context, QObject* parent)
    : QObject(parent), context_(context) {
    rest_.setSingleShot(true);
    rest_.setInterval(rest_ms);
    connect(&rest_, &QTimer::timeout, this, &BackdropKeeper::fetch);
    connect(&context_.open, &open_water::OpenWater::opened, this,
            &BackdropKeeper::takeFromPreferences);
    connect(&context_.open, &open_water::OpenWater::moved, this, &BackdropKeeper::keep);
    connect(&context_.chart, &ChartLink::contentChanged, this, [this] {
        const bool isShown = context_.chart.content().shown.contains(chart::LayerKind::backdrop);
        if (!choice_.path.isEmpty() && isShown != choice_.isShown) {
            choice_.isShown = isShown;
            keep();
            rest_.start();
        }
    });
}

geo::Box BackdropKeeper::aroundWater() const {
    return chart::waterBoxOf(context_.chart.content());
}

void BackdropKeeper::takeFromPreferences() {
    choice_ = {};
    place_.reset();
    asked_.reset();
    const preferences::BackdropChoice kept =
        preferences::Preferences::backdropOf(context_.open.path());
    context_.chart.setBackdrop(nullptr, kept.strength);
    emit changed();
    if (!kept.path.isEmpty()) {
        choice_ = kept; // With its path: it is no other one that would have to be shown.
        context_.chart.setShown(chart::LayerKind::backdrop, kept.isShown);
        choose(kept.path);
    }
}

void BackdropKeeper::choose(const QString& path) {
    const auto frame = context_.open.water()->frame;
    const geo::Box around = aroundWater();
    context_.open.jobs().start<water::BackdropPlace>(
        tr("Looking at the backdrop"),
        [path, frame, around](base::Progress& progress) {
            return water::lookAtBackdrop(path.toStdString(), frame, around, progress);
        },
        [this, path](base::Result<water::BackdropPlace> place) {
            if (place) {
                lay(path, *place);
            } else if (place.error().kind != base::ErrorKind::cancelled) {
                emit context_.open.failed(place.error());
            }
        });
}

void BackdropKeeper::lay(const QString& path, const water::BackdropPlace& place) {
    const bool isOther = path != choice_.path;
    choice_.path = path;
    place_ = place;
    asked_.reset();
    if (!context_.open.water()->frame) {
        edits::change(context_.open, tr("Lay the chart round the backdrop"), {water::Part::facts},
                      [&](water::Water& water) { water.frame = place.frame; });
    }
    // Its box first, so that a chart with nothing else on it turns to it.
    auto bare = std::make_shared<water::Backdrop>();
    bare->whole = place.whole;
    context_.chart.setBackdrop(std::move(bare), choice_.strength);
    if (isOther && !context_.chart.content().shown.contains(chart::LayerKind::backdrop)) {
        choice_.isShown = true;
        context_.chart.setShown(chart::LayerKind::backdrop, true);
    }
    keep();
    emit changed();
    rest_.start();
}

void BackdropKeeper::takeAway() {
    choice_.path.clear();
    place_.reset();
    context_.chart.setBackdrop(nullptr, choice_.strength);
    keep();
    emit changed();
}

void BackdropKeeper::setStrength(double strength) {
    choice_.strength = std::clamp(strength, 0.0, 1.0);
    context_.chart.setBackdrop(context_.chart.content().backdrop, choice_.strength);
    keep();
    emit changed();
}

void BackdropKeeper::look(const chart::ViewFrame& view) {
    view_ = view;
    if (place_) {
        rest_.start();
    }
}

void BackdropKeeper::keep() {
    // Until a water has its file there is nothing to know the choice by; it is kept with that.
    if (const QString path = context_.open.path(); !path.isEmpty()) {
        preferences::Preferences::setBackdrop(path, choice_);
    }
}

void BackdropKeeper::fetch() {
    const auto& now = context_.chart.content().backdrop;
    const bool isThere = now && isEnough(now->window, view_);
    if (!place_ || !choice_.isShown || isThere || (asked_ && isEnough(*asked_, view_))) {
        return;
    }
    asked_ = windowFor(view_);
    context_.open.jobs().start<water::Backdrop>(
        tr("Fetching the backdrop"),
        [path = choice_.path, place = *place_, window = *asked_](base::Progress& progress) {
            return water::showBackdrop(path.toStdString(), place, window, progress);
        },
        [this, path = choice_.path](base::Result<water::Backdrop> backdrop) {
            asked_.reset();
            if (!backdrop) {
                if (backdrop.error().kind != base::ErrorKind::cancelled) {
                    emit context_.open.failed(backdrop.error());
                }
            } else if (path == choice_.path) {
                context_.chart.setBackdrop(
                    std::make_shared<const water::Backdrop>(std::move(*backdrop)),
                    choice_.strength);
            }
        });
}

} // namespace days
