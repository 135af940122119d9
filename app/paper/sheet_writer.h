// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/lettering.h"
#include "app/chart/palette.h"
#include "app/paper/sheet_layout.h"

#include <QPagedPaintDevice>
#include <QPainter>
#include <QStringList>

#include <functional>
#include <vector>

namespace paper {

/// One column of a table: its heading and its width in units.
struct Column {
    QString heading;
    double width = 0.0;
};

/// Writes down a page and goes on to the next where something does not fit: what is asked for as
/// one block never breaks.
class SheetWriter {
public:
    /// \param footer stands at the foot of every page, the page number after it.
    SheetWriter(QPagedPaintDevice& device, const SheetLayout& layout, QString footer);
    ~SheetWriter();
    SheetWriter(const SheetWriter&) = delete;
    SheetWriter& operator=(const SheetWriter&) = delete;
    SheetWriter(SheetWriter&&) = delete;
    SheetWriter& operator=(SheetWriter&&) = delete;

    [[nodiscard]] bool isOpen() const { return painter_.isActive(); }
    [[nodiscard]] QPainter& painter() { return painter_; }
    [[nodiscard]] const chart::Palette& palette() const { return palette_; }
    [[nodiscard]] const QRectF& room() const { return room_; }
    [[nodiscard]] double y() const { return y_; }
    [[nodiscard]] int pages() const { return page_; }

    /// A new page unless `height` still fits; at the top of a page it always does.
    void need(double height);
    void space(double height) { y_ += height; }
    /// Takes `height` as one block and calls `draw` with its box.
    void block(double height, const std::function<void(const QRectF&)>& draw);
    /// Wrapped text over the whole width.
    void paragraph(const QFont& font, const QString& text, double indent = 0.0);
    /// A bold heading that stays with the next `following` units.
    void heading(const QString& text, double following);
    void rule();
    /// A table; rows are as high as their wrapped text asks for, the heading comes again on each
    /// page.
    void table(const std::vector<Column>& columns, const std::vector<QStringList>& rows);

private:
    void turnPage();
    void drawFooter();
    double rowHeight(const std::vector<Column>& columns, const QStringList& row,
                     const QFont& font) const;
    void drawRow(const std::vector<Column>& columns, const QStringList& row, const QFont& font,
                 double height);

    QPagedPaintDevice& device_;
    QPainter painter_;
    const chart::Palette& palette_;
    QRectF room_;
    QString footer_;
    double footerTop_;
    double y_;
    int page_ = 1;
};

/// The height that wrapped text takes in `width`.
[[nodiscard]] double heightOf(const QFont& font, const QString& text, double width);

} // namespace paper
