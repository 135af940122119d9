// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/fact_list.h"
#include "app/widgets/plain_table.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QDropEvent>
#include <QHeaderView>
#include <QMenu>
#include <QMimeData>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include <memory>

namespace {

using widgets::PlainTable;
using Rows = std::vector<QStringList>;

class PlainTableTest : public testing::Test {
protected:
    PlainTableTest() {
        table_.resize(300, 120);
        table_.setRows({{"1  bow", "4.2 m"}, {"2  stern", "3.1 m"}, {"3  lie"}});
        table_.show();
        QObject::connect(&table_, &PlainTable::rowChosen, [this](int row) { chosen_ << row; });
        QObject::connect(&table_, &PlainTable::removeAsked, [this](int row) { removed_ << row; });
    }
    QString at(int row, int column) const { return table_.words(row, column); }

    PlainTable table_{{"Anchor", "Depth"}, 2};
    QList<int> chosen_;
    QList<int> removed_;
};

TEST_F(PlainTableTest, ShowsEveryWordInItsRowAndColumn) {
    EXPECT_EQ(table_.rowCount(), 3);
    EXPECT_EQ(table_.headingOf(0), "Anchor");
    EXPECT_EQ(table_.headingOf(1), "Depth");
    EXPECT_EQ(at(0, 0), "1  bow");
    EXPECT_EQ(at(0, 1), "4.2 m");
    EXPECT_EQ(at(1, 1), "3.1 m");
    EXPECT_EQ(at(2, 1), "");
    const auto dataAt = [&](int column, int role) {
        return table_.model()->index(0, column).data(role);
    };
    EXPECT_EQ(dataAt(0, Qt::ToolTipRole).toString(), "1  bow");
    EXPECT_TRUE(dataAt(0, Qt::TextAlignmentRole).value<Qt::Alignment>() & Qt::AlignLeft);
    EXPECT_TRUE(dataAt(1, Qt::TextAlignmentRole).value<Qt::Alignment>() & Qt::AlignRight);
}

TEST_F(PlainTableTest, TellsWhichRowWasChosen) {
    table_.selectRow(1);
    EXPECT_EQ(chosen_, QList<int>({1}));
    EXPECT_EQ(table_.chosen(), 1);
    QTest::keyClick(&table_, Qt::Key_Escape);
    EXPECT_EQ(chosen_, QList<int>({1, -1}));
    EXPECT_EQ(table_.chosen(), -1);
}

/// A table on which something can be let go without a hand that drags.
class Dropped : public PlainTable {
public:
    using PlainTable::dropEvent;
    using PlainTable::PlainTable;
};

TEST_F(PlainTableTest, ARowLetGoElsewhereAsksToStandThere) {
    Dropped table({"Mark", "Arrive"}, 5);
    table.setRows({{"first"}, {"second"}, {"third"}});
    table.resize(300, 200);
    table.show();
    const auto firstRow = [&table] { return table.model()->index(0, 0); };
    EXPECT_FALSE(table.model()->flags(firstRow()) & Qt::ItemIsDragEnabled);
    table.setRowsMovable();
    EXPECT_TRUE(table.model()->flags(firstRow()) & Qt::ItemIsDragEnabled);
    QSignalSpy moved(&table, &PlainTable::rowMoved);
    const auto letGo = [&table](int row, double share, const QMimeData& held) {
        const QRect box = table.visualRect(table.model()->index(row, 0));
        const QPointF at(10.0, box.top() + share * box.height());
        QDropEvent drop(at, Qt::MoveAction, &held, Qt::LeftButton, Qt::NoModifier);
        table.dropEvent(&drop);
    };
    const std::unique_ptr<QMimeData> row(table.model()->mimeData({firstRow()}));
    table.selectRow(0);
    letGo(1, 0.9, *row); // Between the second and the third.
    letGo(1, 0.1, *row); // Where it is already.
    letGo(2, 0.9, *row);
    table.selectRow(2);
    letGo(0, 0.1, *row);
    letGo(0, 0.9, *row);
    letGo(2, 0.1, *row); // Where it is already.
    const QList<QList<int>> wanted{{0, 1}, {0, 2}, {2, 0}, {2, 1}};
    ASSERT_EQ(moved.count(), wanted.size());
    for (qsizetype i = 0; i < wanted.size(); ++i) {
        EXPECT_EQ(moved[i][0].toInt(), wanted[i][0]) << i;
        EXPECT_EQ(moved[i][1].toInt(), wanted[i][1]) << i;
    }
    EXPECT_EQ(table.rowCount(), 3) << "the rows are laid by whoever hears of it";
    QMimeData text;
    text.setText("words from elsewhere");
    letGo(0, 0.1, text);
    EXPECT_EQ(moved.count(), wanted.size());
}

TEST_F(PlainTableTest, OtherRowsKeepTheChoiceAndTellNobody) {
    table_.selectRow(2);
    chosen_.clear();
    table_.setRows({{"a"}, {"b"}, {"c"}, {"d"}});
    EXPECT_EQ(table_.chosen(), 2);
    table_.setRows({{"a"}, {"b"}});
    EXPECT_EQ(table_.chosen(), -1) << "there is no such row any more";
    EXPECT_TRUE(chosen_.isEmpty());
}

TEST_F(PlainTableTest, OtherRowsKeepTheChoiceOfTheFirstAndOfTheLast) {
    for (const int row : {0, 1, 2}) {
        table_.selectRow(row);
        table_.setRows({{"a"}, {"b"}, {"c"}});
        EXPECT_EQ(table_.chosen(), row);
    }
}

TEST_F(PlainTableTest, IsChosenFromOutsideQuietly) {
    table_.chooseQuietly(1);
    EXPECT_EQ(table_.chosen(), 1);
    table_.chooseQuietly(0);
    EXPECT_EQ(table_.chosen(), 0);
    table_.chooseQuietly(3);
    EXPECT_EQ(table_.chosen(), -1);
    table_.chooseQuietly(2);
    table_.chooseQuietly(-1);
    EXPECT_EQ(table_.chosen(), -1);
    EXPECT_TRUE(chosen_.isEmpty());
}

TEST_F(PlainTableTest, DeleteAsksToRemoveTheChosenRowOnly) {
    QTest::keyClick(&table_, Qt::Key_Delete);
    EXPECT_TRUE(removed_.isEmpty());
    table_.selectRow(2);
    QTest::keyClick(&table_, Qt::Key_Delete);
    EXPECT_EQ(removed_, QList<int>({2}));
}

TEST_F(PlainTableTest, OnlyTheOneColumnIsTypedOverAndToldWhenTheEditorIsClosed) {
    const auto isEditable = [&](int column) {
        return table_.model()->index(1, column).flags().testFlag(Qt::ItemIsEditable);
    };
    EXPECT_FALSE(isEditable(0));
    EXPECT_FALSE(isEditable(1));
    table_.setEditableColumn(1);
    QSignalSpy typed(&table_, &PlainTable::typedOver);
    table_.setRows({{"a", "1"}, {"b", "2"}});
    QCoreApplication::processEvents();
    EXPECT_EQ(typed.count(), 0) << "shown, not typed";
    EXPECT_FALSE(isEditable(0));
    EXPECT_TRUE(isEditable(1));
    table_.model()->setData(table_.model()->index(1, 1), "2"); // as it was
    table_.model()->setData(table_.model()->index(1, 1), "3");
    table_.model()->setData(table_.model()->index(1, 0), "c");
    EXPECT_EQ(typed.count(), 0);
    QCoreApplication::processEvents();
    ASSERT_EQ(typed.count(), 1);
    EXPECT_EQ(typed.at(0).at(0).toInt(), 1);
    EXPECT_EQ(typed.at(0).at(1).toString(), "3");
}

TEST_F(PlainTableTest, ShowsWhatIsNotSoYetPaleAndPassesHeadingsOver) {
    using widgets::RowLook;
    const std::vector<RowLook> looks{RowLook::heading, RowLook::plain, RowLook::faint,
                                     RowLook::struck};
    table_.setRows(
        4, [](int row) { return QStringList{QString::number(row)}; },
        [looks](int row) { return looks.at(static_cast<std::size_t>(row)); });
    const auto font = [this](int row) {
        return table_.model()->data(table_.model()->index(row, 0), Qt::FontRole).value<QFont>();
    };
    EXPECT_TRUE(font(0).bold());
    EXPECT_TRUE(font(2).italic());
    EXPECT_TRUE(font(3).strikeOut());
    EXPECT_FALSE(table_.model()->data(table_.model()->index(1, 0), Qt::FontRole).isValid());
    table_.selectRow(0);
    EXPECT_EQ(table_.chosen(), -1);
    table_.selectRow(1);
    QTest::keyClick(&table_, Qt::Key_Up);
    EXPECT_EQ(table_.chosen(), 1);
    table_.setRows({{"x"}}); // fewer, and none of them a heading
    table_.selectRow(0);
    EXPECT_EQ(table_.chosen(), 0);
    EXPECT_EQ(table_.lookOf(0), RowLook::plain);
}

TEST_F(PlainTableTest, ReturnOpensAndTheSpaceBarTicksTheChosenRow) {
    QList<int> opened;
    QList<int> ticked;
    QObject::connect(&table_, &PlainTable::openAsked, [&](int row) { opened << row; });
    QObject::connect(&table_, &PlainTable::tickAsked, [&](int row) { ticked << row; });
    QTest::keyClick(&table_, Qt::Key_Return);
    QTest::keyClick(&table_, Qt::Key_Space);
    EXPECT_TRUE(opened.isEmpty() && ticked.isEmpty()) << "none is chosen";
    table_.selectRow(1);
    QTest::keyClick(&table_, Qt::Key_Return);
    QTest::keyClick(&table_, Qt::Key_Space);
    EXPECT_EQ(opened, QList<int>{1});
    EXPECT_EQ(ticked, QList<int>{1});
}

TEST_F(PlainTableTest, IsAsHighAsItsRowsUpToTheMost) {
    const int letters = table_.fontMetrics().height();
    const int row = letters + 10;
    const auto rowsHigh = [&] {
        const int rows = table_.sizeHint().height() - 2 - (letters + 6);
        EXPECT_EQ(rows % row, 0);
        return rows / row;
    };
    EXPECT_EQ(rowsHigh(), 2);
    table_.setRows({{"a"}});
    EXPECT_EQ(rowsHigh(), 1);
    table_.setRows({});
    EXPECT_EQ(rowsHigh(), 1);
    PlainTable bare({"", ""}, 4);
    bare.setRows({{"a"}});
    EXPECT_EQ(bare.sizeHint().height(), row + 2) << "no head where there is nothing to say";
}

TEST_F(PlainTableTest, StaysWhereItWasScrolled) {
    table_.setRows(Rows(40, {"row"}));
    QCoreApplication::processEvents();
    table_.verticalScrollBar()->setValue(200);
    table_.setRows(Rows(41, {"row"}));
    EXPECT_EQ(table_.verticalScrollBar()->value(), 200);
}

TEST_F(PlainTableTest, AsksOnlyForTheWordsThatCanBeSeen) {
    constexpr int count = 100'000;
    std::set<int> asked;
    const auto lay = [&](const QString& word) {
        table_.setRows(count, [&asked, word](int row) {
            asked.insert(row);
            return QStringList{word, QString::number(row)};
        });
        QCoreApplication::processEvents();
        table_.grab();
    };
    lay("first");
    table_.verticalScrollBar()->setValue(table_.verticalScrollBar()->maximum());
    table_.grab();
    EXPECT_EQ(at(count - 1, 1), QString::number(count - 1));
    lay("second");
    EXPECT_EQ(at(7, 0), "second");
    EXPECT_LT(asked.size(), 1000U);
    EXPECT_EQ(table_.rowCount(), count);
}

TEST(FactList, SaysEachNameWithItsWordsAndHidesWhenThereAreNone) {
    widgets::FactList list;
    EXPECT_TRUE(list.isHidden());
    list.setFacts({{"mean depth", "5.4 m"}, {"<weed>", "a & b"}});
    EXPECT_FALSE(list.isHidden());
    EXPECT_EQ(list.accessibleName(), "mean depth: 5.4 m\n<weed>: a & b");
    const QString text = list.text();
    EXPECT_TRUE(
        text.contains(QStringLiteral("mean%1depth</td><td>5.4 m</td>").arg(QChar(QChar::Nbsp))))
        << text.toStdString();
    EXPECT_TRUE(text.contains("&lt;weed&gt;</td><td>a &amp; b</td>"));
    list.setFacts({});
    EXPECT_TRUE(list.isHidden());
}

TEST_F(PlainTableTest, CopiesTheChosenRowOrAllWithTheirHeadings) {
    QClipboard& clipboard = *QGuiApplication::clipboard();
    table_.selectRow(1);
    QTest::keyClick(&table_, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(clipboard.text(), "2 stern\t3.1 m");
    QTest::keyClick(&table_, Qt::Key_Escape);
    QTest::keyClick(&table_, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(clipboard.text(), "Anchor\tDepth\n1 bow\t4.2 m\n2 stern\t3.1 m\n3 lie\t\n");
    table_.setRows({{"a\tb\nc", "1 m"}});
    EXPECT_EQ(table_.rowAsText(0), "a b c\t1 m") << "a cell stays a cell";
    table_.setColumnHidden(1, true);
    EXPECT_EQ(table_.allAsText(), "Anchor\na b c\n");
}

TEST_F(PlainTableTest, RowsGrowWithTheType) {
    const int before = table_.sizeHint().height();
    QFont large = table_.font();
    large.setPointSizeF(2.0 * large.pointSizeF());
    table_.setFont(large);
    EXPECT_GT(table_.sizeHint().height(), before + 20);
    EXPECT_GE(table_.rowHeight(0), QFontMetrics(large).height());
}

TEST_F(PlainTableTest, TheMenuCopiesAndRemovesTheChosenRow) {
    table_.selectRow(1);
    const auto choose = [this](const QString& words) {
        QTimer asking;
        bool wasThere = false;
        QObject::connect(&asking, &QTimer::timeout, [&] {
            auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
            if (menu == nullptr) {
                return;
            }
            asking.stop();
            for (QAction* act : menu->actions()) {
                if (act->text() == words) {
                    wasThere = true;
                    act->trigger();
                }
            }
            menu->close();
        });
        asking.start(0);
        QContextMenuEvent asked(QContextMenuEvent::Mouse, {5, 5}, table_.mapToGlobal(QPoint(5, 5)));
        QCoreApplication::sendEvent(table_.viewport(), &asked);
        EXPECT_TRUE(wasThere) << words.toStdString();
    };
    choose("Copy row");
    EXPECT_EQ(QGuiApplication::clipboard()->text(), "2 stern\t3.1 m");
    choose("Copy all rows");
    EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith("Anchor\tDepth\n"));
    choose("Remove");
    EXPECT_EQ(removed_, QList<int>({1}));
}

} // namespace
