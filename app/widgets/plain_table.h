// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableWidget>

#include <vector>

namespace widgets {

/// A quiet table of words: no grid, numbers to the right, as tall as its rows up to a limit. Rows
/// are known by their position.
class PlainTable : public QTableWidget {
    Q_OBJECT
public:
    /// The first column takes the room that is left; all others are as wide as what they hold and
    /// set to the right. \param mostRows shown at once; more scroll.
    PlainTable(const QStringList& columns, int mostRows, QWidget* parent = nullptr);

    /// The one column whose words may be typed over.
    void setEditableColumn(int column);
    /// Shows other rows; the chosen one and how far it was scrolled stay.
    void setRows(const std::vector<QStringList>& rows);
    /// Pale letters, for rows that are old.
    void setFaint(bool isFaint);
    [[nodiscard]] bool isFaint() const { return property("faint").toBool(); }
    /// Marks a row without telling anybody; -1 for none.
    void chooseQuietly(int row);
    [[nodiscard]] int chosen() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    /// The user chose another row; -1 for none.
    void rowChosen(int row);
    void typedOver(int row, const QString& words);
    void removeAsked(int row);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    int mostRows_;
    int editable_ = -1;
};

} // namespace widgets
