// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/water_path.h"

#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace {

using chart::ViewFrame;

QImage filled(const QPainterPath& path) {
    QImage image(400, 300, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.fillPath(path, Qt::black);
    return image;
}

TEST(WaterPath, LeavingOutWhatIsOffThePageChangesNothingOnIt) {
    geo::Ring ring;
    for (int i = 0; i < 3600; ++i) {
        ring.push_back(support::starPoint(1.0, 0.1 * i));
    }
    geo::Box box;
    box.take({-600, -600});
    box.take({600, 600});
    const ViewFrame whole = ViewFrame::showing(box, {400, 300}, 0.0);
    for (const double factor : {1.0, 6.0, 30.0}) {
        for (const double angle : {0.0, 75.0, 200.0}) {
            const ViewFrame view =
                whole.centredOn(support::starPoint(1.0, angle)).zoomed(factor, {200, 150});
            QPainterPath all;
            QPolygonF polygon;
            for (const geo::WaterPoint p : ring) {
                polygon.append(view.toScreen(p));
            }
            all.addPolygon(polygon);
            const QPainterPath thin = chart::screenPath({{ring, {}}}, view, 0.0);
            EXPECT_EQ(filled(thin), filled(all)) << "enlarged " << factor << " at " << angle;
            if (factor > 20.0) {
                EXPECT_LT(thin.elementCount(), 400);
            }
        }
    }
}

TEST(WaterPath, KeepsTheEndsOfALine) {
    const ViewFrame view = ViewFrame::showing({0, 0, 10, 10}, {100, 100}, 0.0);
    const QPolygonF line = chart::screenLine({{0, 0}, {0.01, 0}, {0.02, 0}}, view, 5.0);
    ASSERT_EQ(line.size(), 2);
    EXPECT_EQ(line.last(), view.toScreen({0.02, 0}));
}

TEST(WaterPath, RingsOutOfSightAreLeftOut) {
    const ViewFrame view = ViewFrame::showing({0, 0, 10, 10}, {100, 100}, 0.0);
    EXPECT_TRUE(chart::screenPath({{{{50, 50}, {60, 50}, {60, 60}}, {}}}, view).isEmpty());
}

} // namespace
