// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/support/recorded_pages.h"

#include <QFontMetricsF>
#include <QPaintEngine>
#include <QRegularExpression>

namespace support {

/// Takes everything as it is, so that nothing is broken up before it arrives.
class RecordedPages::Engine : public QPaintEngine {
public:
    explicit Engine(RecordedPages& pages) : QPaintEngine(AllFeatures), pages_(pages) {}

    bool begin(QPaintDevice* /*device*/) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState& /*changed*/) override {}
    [[nodiscard]] Type type() const override { return User; }
    void drawPixmap(const QRectF& /*to*/, const QPixmap& /*picture*/,
                    const QRectF& /*from*/) override {}
    void drawImage(const QRectF& /*to*/, const QImage& /*picture*/, const QRectF& /*from*/,
                   Qt::ImageConversionFlags /*flags*/) override {}

    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        Drawn& text = add(Drawn::Kind::text, {at});
        text.text = item.text();
        text.font = item.font();
    }
    void drawLines(const QLineF* lines, int count) override {
        for (int i = 0; i < count; ++i) {
            add(Drawn::Kind::line, {lines[i].p1(), lines[i].p2()});
        }
    }
    void drawRects(const QRectF* rects, int count) override {
        for (int i = 0; i < count; ++i) {
            add(Drawn::Kind::polygon, QPolygonF({rects[i].topLeft(), rects[i].topRight(),
                                                 rects[i].bottomRight(), rects[i].bottomLeft()}));
        }
    }
    void drawEllipse(const QRectF& box) override {
        add(Drawn::Kind::ellipse, {box.topLeft(), box.bottomRight()});
    }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        add(mode == PolylineMode ? Drawn::Kind::polyline : Drawn::Kind::polygon,
            QPolygonF(QList<QPointF>(points, points + count)));
    }
    void drawPath(const QPainterPath& path) override {
        Drawn& drawn = add(Drawn::Kind::path, {});
        drawn.path = path;
        drawn.origin = state->transform().map(QPointF());
    }

private:
    Drawn& add(Drawn::Kind kind, const QPolygonF& points) {
        Drawn drawn;
        drawn.kind = kind;
        drawn.page = pages_.page_;
        drawn.points = state->transform().map(points);
        drawn.pen = state->pen();
        drawn.brush = state->brush();
        pages_.drawn_.push_back(drawn);
        return pages_.drawn_.back();
    }
    RecordedPages& pages_;
};

RecordedPages::RecordedPages() : QPdfWriter(&buffer), engine_(std::make_unique<Engine>(*this)) {
    buffer.open(QIODevice::WriteOnly);
}

RecordedPages::~RecordedPages() = default;

bool RecordedPages::newPage() {
    ++page_;
    return true;
}

QPaintEngine* RecordedPages::paintEngine() const {
    return engine_.get();
}

std::vector<Drawn> RecordedPages::all(Drawn::Kind kind) const {
    std::vector<Drawn> found;
    for (const Drawn& drawn : drawn_) {
        if (drawn.kind == kind) {
            found.push_back(drawn);
        }
    }
    return found;
}

QStringList RecordedPages::lines(int page) const {
    QStringList lines;
    for (const Drawn& drawn : drawn_) {
        if (drawn.kind == Drawn::Kind::text && (page == 0 || drawn.page == page)) {
            lines << drawn.text;
        }
    }
    return lines;
}

std::vector<QPointF> RecordedPages::lettered(const QString& text, const QFont& font) const {
    const QFontMetricsF metrics(font);
    QPainterPath letters;
    letters.addText(-0.5 * metrics.horizontalAdvance(text), 0.5 * metrics.capHeight(), font, text);
    std::vector<QPointF> places;
    for (const Drawn& drawn : drawn_) {
        const bool isFilled = drawn.brush.style() != Qt::NoBrush && drawn.pen == QPen(Qt::NoPen);
        if (drawn.kind == Drawn::Kind::path && isFilled && drawn.path == letters) {
            places.push_back(drawn.origin);
        }
    }
    return places;
}

QString packed(const QString& text) {
    static const QRegularExpression blanks(QStringLiteral("\\s+"));
    return QString(text).remove(blanks);
}

QString packed(const QStringList& lines) {
    return packed(lines.join(QString()));
}

} // namespace support
