// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_painter.h"
#include "app/chart/lettering.h"

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace support {

/// One thing that was drawn.
struct Drawn {
    QPainterPath path; ///< On the page.
    QPainterPath raw;  ///< As the painter was given it.
    QTransform turn;
    QPen pen;
    QBrush brush;
    QPainterPath clip; ///< Empty where nothing was clipped.

    [[nodiscard]] bool isStroke(const QColor& colour, double width) const {
        return pen.style() != Qt::NoPen && pen.color().rgb() == colour.rgb() &&
               std::abs(pen.widthF() - width) < 1e-6;
    }
    [[nodiscard]] bool isFill(const QColor& colour) const {
        return pen.style() == Qt::NoPen && brush.style() == Qt::SolidPattern &&
               brush.color().rgb() == colour.rgb();
    }
    /// The points of the path in their order, controls of curves among them.
    [[nodiscard]] std::vector<QPointF> points() const {
        std::vector<QPointF> all;
        for (int i = 0; i < path.elementCount(); ++i) {
            all.emplace_back(path.elementAt(i).x, path.elementAt(i).y);
        }
        return all;
    }
    [[nodiscard]] QPointF middle() const { return path.boundingRect().center(); }
};

/// A text that was drawn: letters come as outlines, so that one asks for a text and is told where.
struct Lettered {
    QPointF at;
    QColor colour;
    double angle_deg = 0.0;
};

/// A page that keeps what is painted on it instead of showing it.
class Recorded : public QPaintDevice {
public:
    explicit Recorded(QSize size) : size_(size), engine_(*this) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &engine_; }
    [[nodiscard]] const std::vector<Drawn>& all() const { return all_; }

    template <class Wanted>
    [[nodiscard]] std::vector<Drawn> those(Wanted wanted) const {
        std::vector<Drawn> some;
        std::copy_if(all_.begin(), all_.end(), std::back_inserter(some), wanted);
        return some;
    }
    [[nodiscard]] std::vector<Drawn> strokes(const QColor& colour, double width) const {
        return those([&](const Drawn& drawn) { return drawn.isStroke(colour, width); });
    }
    [[nodiscard]] std::vector<Drawn> fills(const QColor& colour) const {
        return those([&](const Drawn& drawn) { return drawn.isFill(colour); });
    }
    /// Where the text stands, in whichever of the chart's typefaces at this scale.
    [[nodiscard]] std::vector<Lettered> texts(const QString& text, double scale = 1.0) const {
        std::vector<Lettered> found;
        for (const QPainterPath& outline : outlinesOf(text, scale)) {
            for (const Drawn& drawn : all_) {
                if (drawn.pen.style() == Qt::NoPen && drawn.raw == outline) {
                    const QPointF along =
                        drawn.turn.map(QPointF(1.0, 0.0)) - drawn.turn.map(QPointF(0.0, 0.0));
                    found.push_back({drawn.turn.map(QPointF(0.0, 0.0)), drawn.brush.color(),
                                     qRadiansToDegrees(std::atan2(along.y(), along.x()))});
                }
            }
        }
        return found;
    }
    [[nodiscard]] bool says(const QString& text) const { return !texts(text).empty(); }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
        case PdmWidth:
            return size_.width();
        case PdmHeight:
            return size_.height();
        case PdmWidthMM:
            return size_.width() * 254 / 960;
        case PdmHeightMM:
            return size_.height() * 254 / 960;
        case PdmDepth:
            return 32;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        default:
            return 96;
        }
    }

private:
    class Engine : public QPaintEngine {
    public:
        explicit Engine(Recorded& page) : QPaintEngine(AllFeatures), page_(page) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState&) override {}
        [[nodiscard]] Type type() const override { return User; }
        void drawPath(const QPainterPath& path) override { keep(path, painter()->brush()); }
        void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
            QPolygonF polygon;
            for (int i = 0; i < count; ++i) {
                polygon.append(points[i]);
            }
            QPainterPath path;
            path.addPolygon(polygon);
            if (mode != PolylineMode) {
                path.closeSubpath();
            }
            keep(path, mode == PolylineMode ? QBrush() : painter()->brush());
        }
        void drawPoints(const QPointF* points, int count) override {
            QPainterPath path;
            for (int i = 0; i < count; ++i) {
                path.moveTo(points[i]);
                path.lineTo(points[i] + QPointF(1e-3, 0.0)); // a path has no lines without length
            }
            keep(path, QBrush());
        }
        void drawPixmap(const QRectF& to, const QPixmap&, const QRectF&) override { keepBox(to); }
        void drawImage(const QRectF& to, const QImage&, const QRectF&,
                       Qt::ImageConversionFlags) override {
            keepBox(to);
        }
        using QPaintEngine::drawPoints;
        using QPaintEngine::drawPolygon;

    private:
        void keepBox(const QRectF& box) {
            QPainterPath path;
            path.addRect(box);
            keep(path, QBrush(Qt::TexturePattern));
        }
        void keep(const QPainterPath& path, const QBrush& brush) {
            const QPainter& by = *painter();
            const QTransform turn = by.transform();
            page_.all_.push_back({turn.map(path), path, turn, by.pen(), brush,
                                  by.hasClipping() ? turn.map(by.clipPath()) : QPainterPath()});
        }
        Recorded& page_;
    };

    static const std::vector<QPainterPath>& outlinesOf(const QString& text, double scale) {
        static std::map<std::pair<QString, double>, std::vector<QPainterPath>> known;
        std::vector<QPainterPath>& outlines = known[{text, scale}];
        if (outlines.empty()) {
            for (const double size : {1.0, 0.9, 1.3}) {
                for (const auto style :
                     {chart::TypeStyle::plain, chart::TypeStyle::bold, chart::TypeStyle::slanted}) {
                    for (const auto type : {chart::TypeSize::small, chart::TypeSize::normal}) {
                        Recorded page({10, 10});
                        QPainter painter(&page);
                        chart::drawText(painter, chart::typeface(type, size * scale, style), {},
                                        text, {Qt::black, Qt::white}, 0.0);
                        if (std::ranges::find(outlines, page.all_.at(0).raw) == outlines.end()) {
                            outlines.push_back(page.all_.at(0).raw);
                        }
                    }
                }
            }
        }
        return outlines;
    }

    QSize size_;
    std::vector<Drawn> all_;
    mutable Engine engine_;
};

/// Paints the chart of the content in this view onto the page.
inline void paintOn(Recorded& page, const chart::ChartContent& content,
                    const chart::ViewFrame& view) {
    QPainter painter(&page);
    chart::paintChart(painter, view, content);
}

} // namespace support
