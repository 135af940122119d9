// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/widgets/plain_rows.h"

#include <QTableView>

#include <vector>

namespace widgets {

/// A quiet table of words: no grid, numbers to the right, as tall as its rows up to a limit. Rows
/// are known by their position.
class PlainTable : public QTableView {
    Q_OBJECT
public:
    /// The first column takes the room that is left; all others are as wide as what they hold and
    /// set to the right. \param mostRows shown at once; more scroll.
    PlainTable(const QStringList& columns, int mostRows, QWidget* parent = nullptr);

    void setHeadings(const QStringList& headings) { rows_->setHeadings(headings); }
    /// The one column whose words may be typed over.
    void setEditableColumn(int column);
    /// Rows may be dragged to another place; rowMoved() asks for it.
    void setRowsMovable();
    /// Shows other rows; the chosen one and how far it was scrolled stay.
    void setRows(std::vector<QStringList> rows);
    /// The same for rows whose words are asked for when they come into sight.
    void setRows(int count, PlainRows::WordsOf wordsOf, PlainRows::LookOf lookOf = {});
    [[nodiscard]] RowLook lookOf(int row) const { return rows_->lookOf(row); }
    /// Marks a row as if the user had, and tells; -1 for none.
    void choose(int row);
    [[nodiscard]] int rowCount() const { return rows_->rowCount(); }
    [[nodiscard]] int columnCount() const { return rows_->columnCount(); }
    [[nodiscard]] QString words(int row, int column) const { return rows_->words(row, column); }
    [[nodiscard]] QString headingOf(int column) const;
    /// Pale letters, for rows that are old.
    void setFaint(bool isFaint);
    [[nodiscard]] bool isFaint() const { return property("faint").toBool(); }
    /// Marks a row without telling anybody; -1 for none.
    void chooseQuietly(int row);
    [[nodiscard]] int chosen() const;

    /// For a spreadsheet: columns apart by tabs. All rows come with the headings above them.
    [[nodiscard]] QString rowAsText(int row) const;
    [[nodiscard]] QString allAsText() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    /// The user chose another row; -1 for none.
    void rowChosen(int row);
    void typedOver(int row, const QString& words);
    void removeAsked(int row);
    /// Return or a double click on the chosen row.
    void openAsked(int row);
    /// The space bar on the chosen row.
    void tickAsked(int row);
    /// The user wants the row to stand where the other one stands now.
    void rowMoved(int from, int to);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Before which row something is let go; the number of rows below the last one.
    [[nodiscard]] int rowBelow(int y) const;

    /// Rows as high as the type asks for.
    void layRows();

    PlainRows* rows_;
    int mostRows_;
};

} // namespace widgets
