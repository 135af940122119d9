// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/plain_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QStyle>

#include <algorithm>

namespace widgets {

namespace {
constexpr int rowPixels = 26;
constexpr int headPixels = 22;
} // namespace

PlainTable::PlainTable(const QStringList& columns, int mostRows, QWidget* parent)
    : QTableWidget(0, static_cast<int>(columns.size()), parent), mostRows_(mostRows) {
    setHorizontalHeaderLabels(columns);
    setShowGrid(false);
    setFrameShape(QFrame::NoFrame);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setTabKeyNavigation(false);
    setWordWrap(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(rowPixels);
    verticalHeader()->setMinimumSectionSize(rowPixels);
    QHeaderView* head = horizontalHeader();
    head->setHighlightSections(false);
    head->setSectionsClickable(false);
    head->setFixedHeight(headPixels);
    head->setMinimumSectionSize(24);
    head->setVisible(!columns.join(QString()).isEmpty());
    for (int column = 0; column < columnCount(); ++column) {
        horizontalHeaderItem(column)->setTextAlignment(
            Qt::AlignVCenter | (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
        head->setSectionResizeMode(column, column == 0 ? QHeaderView::Stretch
                                                       : QHeaderView::ResizeToContents);
    }
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(this, &QTableWidget::itemSelectionChanged, this, [this] { emit rowChosen(chosen()); });
    connect(this, &QTableWidget::itemChanged, this, [this](QTableWidgetItem* item) {
        if (item->column() == editable_) {
            // Once the editor is closed: what follows may well lay other rows.
            QMetaObject::invokeMethod(
                this, [this, row = item->row(), text = item->text()] { emit typedOver(row, text); },
                Qt::QueuedConnection);
        }
    });
}

void PlainTable::setEditableColumn(int column) {
    editable_ = column;
    setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::AnyKeyPressed);
}

void PlainTable::setFaint(bool isFaint) {
    if (isFaint != this->isFaint()) {
        setProperty("faint", isFaint);
        style()->unpolish(this);
        style()->polish(this);
    }
}

void PlainTable::setRows(const std::vector<QStringList>& rows) {
    const QSignalBlocker quiet(this);
    const int kept = chosen();
    const int scrolled = verticalScrollBar()->value();
    setRowCount(static_cast<int>(rows.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const QStringList& words = rows[static_cast<std::size_t>(row)];
        for (int column = 0; column < columnCount(); ++column) {
            auto* cell = new QTableWidgetItem(words.value(column));
            cell->setTextAlignment(Qt::AlignVCenter |
                                   (column == 0 ? Qt::AlignLeft : Qt::AlignRight));
            cell->setToolTip(words.value(column));
            Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
            if (column == editable_) {
                flags |= Qt::ItemIsEditable;
            }
            cell->setFlags(flags);
            setItem(row, column, cell);
        }
    }
    updateGeometry();
    if (kept >= 0 && kept < rowCount()) {
        selectRow(kept);
    } else {
        clearSelection(); // Not the row that came to stand in its place.
    }
    verticalScrollBar()->setValue(scrolled);
}

void PlainTable::chooseQuietly(int row) {
    const QSignalBlocker quiet(this);
    if (row == chosen()) {
        return;
    }
    if (row < 0 || row >= rowCount()) {
        clearSelection();
        setCurrentItem(nullptr);
    } else {
        setCurrentCell(row, 0);
        scrollToItem(item(row, 0));
    }
}

int PlainTable::chosen() const {
    const QList<QTableWidgetItem*> items = selectedItems();
    return items.isEmpty() ? -1 : items.front()->row();
}

QSize PlainTable::sizeHint() const {
    const int head = horizontalHeader()->isVisibleTo(this) ? headPixels : 0;
    const int rows = std::clamp(rowCount(), 1, mostRows_);
    return {240, head + rows * rowPixels + 2};
}

void PlainTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Delete && chosen() >= 0) {
        emit removeAsked(chosen());
        return;
    }
    if (event->key() == Qt::Key_Escape && chosen() >= 0 && state() != EditingState) {
        clearSelection();
        return;
    }
    QTableWidget::keyPressEvent(event);
}

} // namespace widgets
