// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBuffer>
#include <QFont>
#include <QPainterPath>
#include <QPdfWriter>
#include <QPen>
#include <QPolygonF>

#include <memory>
#include <vector>

namespace support {

/// One thing that was drawn.
struct Drawn {
    enum class Kind { text, line, ellipse, polyline, polygon, path };
    Kind kind = Kind::text;
    int page = 1;
    QString text;      ///< Of a text, as it was handed over; letters drawn as outlines are paths.
    QFont font;        ///< Of a text.
    QPolygonF points;  ///< Text: its baseline's start. Ellipse: upper left, lower right of its box.
    QPainterPath path; ///< As it was before it was placed.
    QPointF origin;    ///< Where the zero of that path lies.
    QPen pen{Qt::NoPen};
    QBrush brush{Qt::NoBrush};
};

/// What the paper writes to, made before it and gone after it.
struct Nowhere {
    QBuffer buffer;
};

/// A paper that remembers what is drawn on it instead of making marks: so that a page can be read
/// back and its lines measured. Coordinates are those of the device.
class RecordedPages : private Nowhere, public QPdfWriter {
public:
    RecordedPages();
    ~RecordedPages() override;

    bool newPage() override;

    [[nodiscard]] const std::vector<Drawn>& drawn() const { return drawn_; }
    [[nodiscard]] int pages() const { return page_; }
    /// Everything of one kind.
    [[nodiscard]] std::vector<Drawn> all(Drawn::Kind kind) const;
    /// What was written, in the order in which it was, a line each. \param page 0: on all.
    [[nodiscard]] QStringList lines(int page = 0) const;
    /// The middles of all places where just this text stands in outlined letters of this font.
    [[nodiscard]] std::vector<QPointF> lettered(const QString& text, const QFont& font) const;

protected:
    [[nodiscard]] QPaintEngine* paintEngine() const override;

private:
    class Engine;
    std::vector<Drawn> drawn_;
    int page_ = 1;
    std::unique_ptr<Engine> engine_;
};

/// Without any blank: lines break where there is room, which is not what is compared.
[[nodiscard]] QString packed(const QString& text);
[[nodiscard]] QString packed(const QStringList& lines);

} // namespace support
