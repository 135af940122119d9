// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/plain_rows.h"

#include <QApplication>
#include <QBrush>
#include <QFont>
#include <QPalette>

namespace widgets {

PlainRows::PlainRows(QStringList columns, QObject* parent)
    : QAbstractTableModel(parent), columns_(std::move(columns)) {}

void PlainRows::setHeadings(QStringList headings) {
    headings.resize(columns_.size());
    columns_ = std::move(headings);
    emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

void PlainRows::setRows(int count, WordsOf wordsOf, LookOf lookOf) {
    // What stands in the rows changes, not which rows there are: nothing is laid out anew.
    if (count > count_) {
        beginInsertRows({}, count_, count - 1);
    } else if (count < count_) {
        beginRemoveRows({}, count, count_ - 1);
    }
    const int before = std::exchange(count_, count);
    wordsOf_ = std::move(wordsOf);
    lookOf_ = std::move(lookOf);
    lookedAt_.reset();
    if (count > before) {
        endInsertRows();
    } else if (count < before) {
        endRemoveRows();
    }
    if (count > 0) {
        emit dataChanged(index(0, 0), index(count - 1, columnCount() - 1));
    }
}

QString PlainRows::words(int row, int column) const {
    if (row < 0 || row >= count_) {
        return {};
    }
    if (!lookedAt_ || lookedAt_->first != row) {
        lookedAt_.emplace(row, wordsOf_(row));
    }
    return lookedAt_->second.value(column);
}

RowLook PlainRows::lookOf(int row) const {
    return lookOf_ && row >= 0 && row < count_ ? lookOf_(row) : RowLook::plain;
}

QVariant PlainRows::lookAt(int row, int role) const {
    const RowLook look = lookOf(row);
    if (look == RowLook::plain) {
        return {};
    }
    if (role == Qt::ForegroundRole) {
        const QPalette palette = QApplication::palette();
        return QBrush(palette.color(look == RowLook::heading ? QPalette::WindowText
                                                             : QPalette::PlaceholderText));
    }
    QFont font;
    font.setBold(look == RowLook::heading);
    font.setItalic(look == RowLook::faint);
    font.setStrikeOut(look == RowLook::struck);
    return font;
}

int PlainRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count_;
}

int PlainRows::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

QVariant PlainRows::data(const QModelIndex& at, int role) const {
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
    case Qt::ToolTipRole:
        return words(at.row(), at.column());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::AlignVCenter |
                                   (at.column() == 0 ? Qt::AlignLeft : Qt::AlignRight));
    case Qt::FontRole:
    case Qt::ForegroundRole:
        return lookAt(at.row(), role);
    default:
        return {};
    }
}

QVariant PlainRows::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Horizontal && role == Qt::DisplayRole) {
        return columns_.value(section);
    }
    return role == Qt::TextAlignmentRole ? data(index(0, section), role) : QVariant();
}

Qt::ItemFlags PlainRows::flags(const QModelIndex& at) const {
    if (!at.isValid()) { // Between the rows.
        return areMovable_ ? Qt::ItemIsDropEnabled : Qt::NoItemFlags;
    }
    if (lookOf(at.row()) == RowLook::heading) {
        return Qt::NoItemFlags;
    }
    const Qt::ItemFlags all = Qt::ItemIsEnabled | Qt::ItemIsSelectable |
                              (areMovable_ ? Qt::ItemIsDragEnabled : Qt::NoItemFlags);
    return at.column() == editable_ ? all | Qt::ItemIsEditable : all;
}

bool PlainRows::setData(const QModelIndex& at, const QVariant& value, int role) {
    const QString typed = value.toString();
    if (role == Qt::EditRole && at.column() == editable_ && typed != words(at.row(), at.column())) {
        emit typedOver(at.row(), typed);
    }
    return true;
}

} // namespace widgets
