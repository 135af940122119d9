// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/plain_table.h"

#include "app/widgets/look.h"

#include <QDropEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMimeData>
#include <QScrollBar>
#include <QSignalBlocker>

#include <algorithm>

namespace widgets {

namespace {
constexpr int rowPixels = 26;
constexpr int headPixels = 22;
/// For the width of a column; what stands in a log of years need not all be measured.
constexpr int rowsMeasured = 100;
} // namespace

PlainTable::PlainTable(const QStringList& columns, int mostRows, QWidget* parent)
    : QTableView(parent), rows_(new PlainRows(columns, this)), mostRows_(mostRows) {
    setModel(rows_);
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
    head->setResizeContentsPrecision(rowsMeasured);
    for (int column = 0; column < columnCount(); ++column) {
        head->setSectionResizeMode(column, column == 0 ? QHeaderView::Stretch
                                                       : QHeaderView::ResizeToContents);
    }
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(selectionModel(), &QItemSelectionModel::selectionChanged, this,
            [this] { emit rowChosen(chosen()); });
    connect(this, &QTableView::doubleClicked, this,
            [this](const QModelIndex& at) { emit openAsked(at.row()); });
    // Once the editor is closed: what follows may well lay other rows.
    connect(rows_, &PlainRows::typedOver, this, &PlainTable::typedOver, Qt::QueuedConnection);
}

void PlainTable::setEditableColumn(int column) {
    rows_->setEditableColumn(column);
    setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::AnyKeyPressed);
}

void PlainTable::setRowsMovable() {
    rows_->setMovable(true);
    setDragDropMode(QAbstractItemView::InternalMove);
    setDragDropOverwriteMode(false);
    setDefaultDropAction(Qt::MoveAction);
}

void PlainTable::setFaint(bool isFaint) {
    if (isFaint != this->isFaint()) {
        setLook(*this, "faint", isFaint);
    }
}

void PlainTable::setRows(std::vector<QStringList> rows) {
    const int count = static_cast<int>(rows.size());
    setRows(count,
            [rows = std::move(rows)](int row) { return rows[static_cast<std::size_t>(row)]; });
}

void PlainTable::setRows(int count, PlainRows::WordsOf wordsOf, PlainRows::LookOf lookOf) {
    const QSignalBlocker quiet(this);
    const int kept = chosen();
    const int scrolled = verticalScrollBar()->value();
    const bool isOtherHeight = count != rowCount();
    rows_->setRows(count, std::move(wordsOf), std::move(lookOf));
    if (isOtherHeight) {
        updateGeometry();
    }
    if (kept < 0 || kept >= rowCount()) {
        clearSelection(); // Not the row that came to stand in its place.
    }
    verticalScrollBar()->setValue(scrolled);
}

QString PlainTable::headingOf(int column) const {
    return rows_->headerData(column, Qt::Horizontal).toString();
}

void PlainTable::chooseQuietly(int row) {
    const QSignalBlocker quiet(this);
    if (row == chosen()) {
        return;
    }
    if (row < 0 || row >= rowCount()) {
        clearSelection();
        setCurrentIndex({});
    } else {
        setCurrentIndex(rows_->index(row, 0));
        scrollTo(rows_->index(row, 0));
    }
}

void PlainTable::choose(int row) {
    if (row != chosen()) {
        chooseQuietly(row);
        emit rowChosen(chosen());
    }
}

int PlainTable::chosen() const {
    const QModelIndexList rows = selectionModel()->selectedRows();
    return rows.isEmpty() ? -1 : rows.front().row();
}

QSize PlainTable::sizeHint() const {
    const int head = horizontalHeader()->isVisibleTo(this) ? headPixels : 0;
    const int rows = std::clamp(rowCount(), 1, mostRows_);
    return {240, head + rows * rowPixels + 2};
}

int PlainTable::rowBelow(int y) const {
    const int row = rowAt(y);
    if (row < 0) {
        return rowCount();
    }
    return y - rowViewportPosition(row) > rowHeight(row) / 2 ? row + 1 : row;
}

void PlainTable::dropEvent(QDropEvent* event) {
    const int from = chosen();
    const bool isOfAnother = event->source() != nullptr && event->source() != this;
    const QStringList ofRows = rows_->mimeTypes();
    if (isOfAnother || from < 0 || !event->mimeData()->hasFormat(ofRows.front())) {
        event->ignore();
        return;
    }
    const int before = rowBelow(static_cast<int>(event->position().y()));
    const int to = before > from ? before - 1 : before;
    // The rows are laid anew by whoever hears of it; nothing is to be taken out here.
    event->setDropAction(Qt::IgnoreAction);
    event->accept();
    if (to != from) {
        emit rowMoved(from, to);
    }
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
    const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isReturn && chosen() >= 0 && state() != EditingState) {
        emit openAsked(chosen());
        return;
    }
    if (event->key() == Qt::Key_Space && chosen() >= 0 && state() != EditingState) {
        emit tickAsked(chosen());
        return;
    }
    QTableView::keyPressEvent(event);
}

} // namespace widgets
