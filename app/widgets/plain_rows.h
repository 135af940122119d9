// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <functional>
#include <optional>
#include <utility>

namespace widgets {

/// How a row looks, and what can be done with it.
enum class RowLook {
    plain,
    heading, ///< Of the rows below it; cannot be chosen.
    faint,   ///< Not so yet, or not any more.
    struck,  ///< Faint, with a line through it.
};

/// The rows of a table of words. The words of a row are asked for when it is looked at, so that a
/// table of a hundred thousand rows costs what can be seen of it.
class PlainRows : public QAbstractTableModel {
    Q_OBJECT
public:
    using WordsOf = std::function<QStringList(int row)>;
    using LookOf = std::function<RowLook(int row)>;

    PlainRows(QStringList columns, QObject* parent);

    /// Other words above the columns, of which there are as many as before.
    void setHeadings(QStringList headings);
    /// Other rows; both hold until there are others again. \param lookOf empty: all are plain.
    void setRows(int count, WordsOf wordsOf, LookOf lookOf = {});
    [[nodiscard]] RowLook lookOf(int row) const;
    /// The one column whose words may be typed over.
    void setEditableColumn(int column) { editable_ = column; }
    /// Whether rows may be dragged to another place among themselves.
    void setMovable(bool areMovable) { areMovable_ = areMovable; }
    /// Empty where the row has no such word.
    [[nodiscard]] QString words(int row, int column) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& at) const override;
    [[nodiscard]] Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }
    bool setData(const QModelIndex& at, const QVariant& value, int role = Qt::EditRole) override;

signals:
    void typedOver(int row, const QString& words);

private:
    /// Font and colour of a row that is not plain.
    [[nodiscard]] QVariant lookAt(int row, int role) const;

    QStringList columns_;
    int editable_ = -1;
    bool areMovable_ = false;
    int count_ = 0;
    WordsOf wordsOf_;
    LookOf lookOf_;
    mutable std::optional<std::pair<int, QStringList>> lookedAt_; ///< A row and its words.
};

} // namespace widgets
