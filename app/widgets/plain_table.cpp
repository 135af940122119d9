// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/plain_table.h"

#include "app/widgets/look.h"

#include <QClipboard>
#include <QContextMenuEvent>
#include <QDropEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QMetaMethod>
#include <QMimeData>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSignalBlocker>

#include <algorithm>

namespace widgets {

namespace {
constexpr int rowPad = 10;
constexpr int headPad = 6;
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
    QHeaderView* head = horizontalHeader();
    head->setHighlightSections(false);
    head->setSectionsClickable(false);
    head->setMinimumSectionSize(24);
    head->setVisible(!columns.join(QString()).isEmpty());
    head->setResizeContentsPrecision(rowsMeasured);
    for (int column = 0; column < columnCount(); ++column) {
        head->setSectionResizeMode(column, column == 0 ? QHeaderView::Stretch
                                                       : QHeaderView::ResizeToContents);
    }
    // Until it is called something better: what its columns are.
    setAccessibleName(
        columns.filter(QRegularExpression(QStringLiteral("\\w"))).join(QStringLiteral(", ")));
    layRows();
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
    const QHeaderView* head = horizontalHeader();
    const int rows = std::clamp(rowCount(), 1, mostRows_);
    return {240, (head->isVisibleTo(this) ? head->minimumHeight() : 0) +
                     rows * verticalHeader()->defaultSectionSize() + 2};
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

void PlainTable::layRows() {
    const int letters = fontMetrics().height();
    verticalHeader()->setMinimumSectionSize(letters + rowPad);
    verticalHeader()->setDefaultSectionSize(letters + rowPad);
    horizontalHeader()->setFixedHeight(letters + headPad);
}

void PlainTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        layRows();
        updateGeometry();
    }
}

QString PlainTable::rowAsText(int row) const {
    QStringList cells;
    for (int column = 0; column < columnCount(); ++column) {
        if (!isColumnHidden(column)) {
            cells.append(words(row, column).simplified());
        }
    }
    return cells.join(QLatin1Char('\t'));
}

QString PlainTable::allAsText() const {
    QStringList lines;
    QStringList heads;
    for (int column = 0; column < columnCount(); ++column) {
        if (!isColumnHidden(column)) {
            heads.append(headingOf(column));
        }
    }
    if (!heads.join(QString()).isEmpty()) {
        lines.append(heads.join(QLatin1Char('\t')));
    }
    for (int row = 0; row < rowCount(); ++row) {
        lines.append(rowAsText(row));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void PlainTable::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    const auto copy = [](const QString& text) { QGuiApplication::clipboard()->setText(text); };
    const int row = chosen();
    QAction* copyRow = menu.addAction(tr("Copy row"), this, [&] { copy(rowAsText(row)); });
    copyRow->setEnabled(row >= 0);
    menu.addAction(tr("Copy all rows"), this, [&] { copy(allAsText()); })
        ->setEnabled(rowCount() > 0);
    if (isSignalConnected(QMetaMethod::fromSignal(&PlainTable::removeAsked))) {
        menu.addSeparator();
        menu.addAction(tr("Remove"), this, [&] { emit removeAsked(row); })->setEnabled(row >= 0);
    }
    menu.exec(event->globalPos());
}

void PlainTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy) && state() != EditingState) {
        QGuiApplication::clipboard()->setText(chosen() >= 0 ? rowAsText(chosen()) : allAsText());
        return;
    }
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
