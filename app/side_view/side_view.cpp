// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_view.h"

#include "app/chart/lettering.h"
#include "app/chart/old_card.h"
#include "app/chart/verdict_now.h"
#include "app/side_view/brush_stroke.h"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <utility>

namespace side_view {

namespace {

constexpr double answersWithin_m = 40.0; // of the cut, or of the track, to a place on the chart
constexpr double shortestTrack_m = 40.0;
constexpr double stretch_m = 240.0; // of track round a sounding that is to be shown

} // namespace

SideView::SideView(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("The cut"));
}

void SideView::setContent(chart::ChartContent content) {
    content_ = std::move(content);
    renew();
}

void SideView::showMark(int rank) {
    shown_ = MarkCut{rank};
    renew();
}

void SideView::setTried(std::optional<marks::Mark> tried) {
    tried_ = std::move(tried);
    if (std::holds_alternative<MarkCut>(shown_)) {
        renew();
    }
}

SideScene SideView::sceneOfShown(int rank) const {
    const bool isChosen = content_.selection.mark == rank;
    const auto rod = isChosen ? content_.selection.rod : std::nullopt;
    return tried_ && tried_->rank == rank ? sceneOfMark(content_, *tried_, rod)
                                          : sceneOfMark(content_, rank, rod);
}

void SideView::showCut(geo::WaterPoint from, geo::WaterPoint to) {
    shown_ = LineCut{{from, to}};
    renew();
}

void SideView::showTrack(int day) {
    shown_ = DayTrack{day};
    const auto brush = profile_.brush;
    profile_ = {};
    renew();
    setBrush(brush ? std::optional(brush->act) : std::nullopt);
}

void SideView::setBrush(std::optional<BrushAct> act) {
    profile_.brush = act ? std::optional(Brush{*act, {}, false, {}}) : std::nullopt;
    showCursor();
    update();
}

void SideView::showCursor() {
    setCursor(showsTrack() && profile_.brush ? Qt::CrossCursor : Qt::ArrowCursor);
}

void SideView::setChosen(std::optional<chart::SoundingPick> sounding, bool isToBeShown) {
    if (!sounding) {
        profile_.chosen.reset();
        update();
        return;
    }
    const auto* track = std::get_if<DayTrack>(&shown_);
    if (track == nullptr || track->day != sounding->day) {
        showTrack(sounding->day);
    }
    const auto& points = profile_.profile.points;
    if (sounding->sounding < points.size()) {
        profile_.chosen = sounding->sounding;
        bringIntoSight(points[sounding->sounding].along_m, isToBeShown);
    }
    update();
}

double SideView::wholeTrack_m() const {
    return std::max(profile_.profile.length_m(), shortestTrack_m);
}

void SideView::bringIntoSight(double along_m, bool isToBeShown) {
    const double now = profile_.to_m - profile_.from_m;
    const double span =
        std::min(isToBeShown && now > 2.0 * stretch_m ? stretch_m : now, wholeTrack_m());
    const double edge = isToBeShown ? 0.15 * now : 0.0;
    const bool isInSight =
        along_m >= profile_.from_m + edge && along_m <= profile_.to_m - edge && span == now;
    if (!isInSight) {
        profile_.from_m =
            std::clamp(along_m - 0.5 * span, 0.0, std::max(wholeTrack_m() - span, 0.0));
        profile_.to_m = profile_.from_m + span;
    }
}

void SideView::showNothing() {
    shown_ = std::monostate();
    renew();
}

void SideView::renew() {
    ++scenes_;
    scene_ = {};
    if (const auto* mark = std::get_if<MarkCut>(&shown_)) {
        scene_ = sceneOfShown(mark->rank);
    } else if (const auto* line = std::get_if<LineCut>(&shown_)) {
        scene_ = sceneAlong(content_, line->path);
    } else if (const auto* track = std::get_if<DayTrack>(&shown_)) {
        renewTrack(track->day);
    }
    scene_.inks = content_.inks; // Where there is nothing to cut there is still a sheet.
    showCursor();
    update();
    emit cutChanged(scene_.cut.path);
}

void SideView::renewTrack(int day) {
    const auto& checked = content_.derived.checked;
    const auto position = static_cast<std::size_t>(std::max(day, 0));
    const std::size_t before = profile_.profile.points.size();
    profile_.profile = {};
    if (checked && position < checked->survey.days.size()) {
        reduction::ReducedDay reduced = checked->survey.days[position];
        reduced.verdicts = chart::verdictsNow(content_, position);
        profile_.profile = makeTrackProfile(reduced);
    }
    profile_.words = content_.words;
    profile_.inks = content_.inks;
    profile_.typeScale = content_.typeScale;
    if (before == 0) {
        profile_.from_m = 0.0;
        profile_.to_m = wholeTrack_m();
    }
    if (profile_.brush && profile_.profile.points.size() != before) {
        profile_.brush->met.clear(); // Other soundings than those it was drawn over.
    }
}

void SideView::setPointed(std::optional<geo::WaterPoint> place) {
    if (showsTrack()) {
        profile_.pointed = place ? profile_.profile.nearest(*place, answersWithin_m) : std::nullopt;
    } else {
        scene_.pointed_m = place ? scene_.cut.alongOf(*place, answersWithin_m) : std::nullopt;
    }
    update();
}

void SideView::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    const bool isTrack = showsTrack() && !profile_.profile.points.empty();
    const SheetOf wanted{scenes_, isTrack ? profile_.from_m : 0.0, isTrack ? profile_.to_m : 0.0,
                         size() * devicePixelRatioF()};
    if (sheet_.isNull() || wanted != sheetOf_) {
        sheetOf_ = wanted;
        paintSheet();
    }
    QPainter painter(this);
    painter.drawPixmap(0, 0, sheet_);
    if (isTrack) {
        paintOverTrack(painter, profile_, page(), content_.typeScale);
    } else {
        paintPointer(painter, scene_, page(), content_.typeScale);
    }
}

void SideView::paintSheet() {
    sheet_ = QPixmap(sheetOf_.size);
    sheet_.setDevicePixelRatio(devicePixelRatioF());
    QPainter painter(&sheet_);
    if (showsTrack() && !profile_.profile.points.empty()) {
        paintTrack(painter, profile_, page(), content_.typeScale);
    } else {
        paintStill(painter, scene_, page(), content_.typeScale);
        drawWords(painter);
    }
}

void SideView::drawWords(QPainter& painter) {
    if (scene_.cut.isEmpty()) {
        const chart::Palette& palette = chart::Palette::of(content_.inks);
        painter.setRenderHint(QPainter::Antialiasing, true);
        chart::drawText(painter, chart::typeface(chart::TypeSize::normal, content_.typeScale),
                        page().center(),
                        tr("Choose a mark, or draw a cut across the chart, to see the water from "
                           "the side"),
                        {palette.faintInk, palette.card}, 0.0);
        return;
    }
    if (const QString words = chart::oldWords(content_.age, scene_.mark.has_value());
        !words.isEmpty()) {
        painter.setRenderHint(QPainter::Antialiasing, true);
        chart::drawOldCard(painter, chart::Palette::of(content_.inks), {0.5 * width(), 30.0}, words,
                           content_.typeScale);
    }
}

void SideView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && showsTrack() && profile_.brush) {
        profile_.brush->isHeld = true;
        profile_.brush->at = event->position();
        drawOn(profile_, page(), event->position());
        update();
    }
}

void SideView::mouseMoveEvent(QMouseEvent* event) {
    const double x = event->position().x();
    if (profile_.brush && profile_.brush->isHeld) {
        drawOn(profile_, page(), event->position());
    } else if (profile_.brush) {
        profile_.brush->at = event->position();
    }
    if (showsTrack()) {
        profile_.pointed = pointUnder(profile_, page(), event->position());
        if (profile_.pointed) {
            emit pointedAt(profile_.profile.points[*profile_.pointed].at);
        }
    } else if (!scene_.cut.isEmpty()) {
        const double along =
            std::clamp(frameOf(scene_, page()).alongAt(x), 0.0, scene_.cut.length_m());
        scene_.pointed_m = along;
        emit pointedAt(scene_.cut.placeAt(along));
    }
    update();
}

void SideView::mouseReleaseEvent(QMouseEvent* event) {
    const auto* track = std::get_if<DayTrack>(&shown_);
    if (track == nullptr || event->button() != Qt::LeftButton) {
        return;
    }
    if (profile_.brush && profile_.brush->isHeld) {
        endStroke(track->day);
    } else if (const auto under = pointUnder(profile_, page(), event->position())) {
        emit soundingClicked({track->day, profile_.profile.points[*under].sounding});
    }
}

void SideView::endStroke(int day) {
    std::vector<std::size_t> met;
    for (const std::size_t i : std::exchange(profile_.brush->met, {})) {
        met.push_back(profile_.profile.points[i].sounding);
    }
    profile_.brush->isHeld = false;
    update();
    if (!met.empty()) {
        emit soundingsBrushed(day, met);
    }
}

void SideView::wheelEvent(QWheelEvent* event) {
    if (!showsTrack()) {
        event->ignore();
        return;
    }
    // The track is long: the wheel enlarges it about the pointer, sideways it moves along.
    const SideFrame frame = frameOf(profile_, page());
    const double whole = wholeTrack_m();
    const double fixed = frame.alongAt(event->position().x());
    const double shift = -event->angleDelta().x() / 120.0 * 0.1 * (frame.to_m - frame.from_m);
    const double factor = std::pow(0.8, event->angleDelta().y() / 120.0);
    const double span = std::clamp((frame.to_m - frame.from_m) * factor, shortestTrack_m, whole);
    const double share = (fixed - frame.from_m) / (frame.to_m - frame.from_m);
    profile_.from_m = std::clamp(fixed - share * span + shift, 0.0, std::max(whole - span, 0.0));
    profile_.to_m = profile_.from_m + span;
    update();
    event->accept();
}

void SideView::leaveEvent(QEvent* event) {
    static_cast<void>(event);
    scene_.pointed_m.reset();
    profile_.pointed.reset();
    if (profile_.brush) {
        profile_.brush->at.reset();
    }
    update();
    emit pointedAt(std::nullopt);
}

} // namespace side_view
