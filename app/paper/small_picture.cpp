// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/small_picture.h"

#include "app/chart/chart_painter.h"
#include "app/chart/palette.h"

#include <QPainter>

namespace paper {

namespace {
constexpr int drawnLarger = 3; // than shown: lines are made for a screen
} // namespace

QImage renderSmallPicture(std::shared_ptr<const water::Water> water, const water::Derived& kept,
                          QSize size, chart::Inks inks) {
    using chart::LayerKind;
    chart::ChartContent content;
    content.water = std::move(water);
    content.derived = kept;
    content.inks = inks;
    content.shown = {LayerKind::depth, LayerKind::closed};
    const QSize large = size * drawnLarger;
    QImage picture(large, QImage::Format_RGB32);
    picture.fill(chart::Palette::of(inks).paper);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing, true);
    chart::paintChart(painter, chart::wholeWater(content, large), content);
    painter.end();
    return picture.scaled(size, Qt::KeepAspectRatio, Qt::SmoothTransformation);
}

} // namespace paper
