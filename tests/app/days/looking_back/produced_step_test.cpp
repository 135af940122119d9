// SPDX-License-Identifier: GPL-3.0-or-later
// The page of what produced on a water that is drawn: its table, the row beside the chosen one, the
// shade on the chart, and what it says where it cannot count.
#include "app/chart/palette.h"
#include "app/days/looking_back/produced_view.h"
#include "app/edits/add_stays.h"
#include "app/paper/rates_picture.h"
#include "app/widgets/ink_roles.h"
#include "app/widgets/interval_bar.h"
#include "core/water/questions/review_log.h"
#include "tests/app/days/autumn_log.h"
#include "tests/app/days/looking_back/back_desk.h"
#include "tests/support/held_job.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>

#include <algorithm>

namespace {

namespace looking_back = days::looking_back;
using water::ReviewBy;

class ProducedPage : public support::BackDesk {
protected:
    void SetUp() override {
        BackDesk::SetUp();
        sections_ = open_.derived().sections;
        ASSERT_GE(sections_->sections.size(), 3U);
        edits::addStays(open_, "Add", {stayIn(0, 10, 1), stayIn(1, 11, 4), stayIn(0, 12, 0)});
        day_->steps().openStep(3);
        count();
    }
    [[nodiscard]] logbook::Stay stayIn(std::size_t section, int day, int fish) const {
        const std::string date = "2026-09-" + std::to_string(day);
        logbook::Stay stay = autumn::stayAt(date + " 08:00", date + " 13:00", 2, "smelt");
        stay.place = open_.water()->frame->toEarth(sections_->sections[section].middle);
        for (int k = 0; k < fish; ++k) {
            stay.runs.push_back(autumn::fishAt(date + " 09:00", "pike", 5.0));
        }
        return stay;
    }
    [[nodiscard]] QString nameOf(std::size_t section) const {
        return QString::fromStdString(sections_->sections[section].name);
    }
    /// Asked with one turn, and shown with the next.
    void count() {
        turn();
        turn();
    }
    widgets::PlainTable& table() { return named<widgets::PlainTable>("What produced"); }
    /// The row of that name; -1 where there is none.
    int rowOf(const QString& name) {
        for (int row = 0; row < table().rowCount(); ++row) {
            if (table().words(row, 0) == name) {
                return row;
            }
        }
        return -1;
    }
    [[nodiscard]] rates::RateTable counted(ReviewBy by) const {
        water::ReviewQuestion question;
        question.by = by;
        base::Progress silent;
        return water::reviewLog(*open_.water(), open_.derived(), question, silent).value();
    }
    void typeDay(const char* name, const char* day) {
        auto& field = named<widgets::AmountField>(name);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, day);
        QTest::keyClick(&field, Qt::Key_Return);
        count();
    }

    std::shared_ptr<const sections::SectionMap> sections_;
};

TEST_F(ProducedPage, ListsWhatWasFishedWithTheWholeBelowAndTheUntriedWhereAskedFor) {
    ASSERT_EQ(table().rowCount(), 3) << "two sections, and all";
    EXPECT_EQ(table().words(0, 0), nameOf(1)) << "the best first";
    EXPECT_EQ(table().words(0, 3), "4");
    EXPECT_EQ(table().words(1, 2), "1 of 2") << "a blank of two stays";
    EXPECT_EQ(table().words(2, 0), "all");
    EXPECT_EQ(table().words(2, 3), "5");
    const std::size_t untried = sections_->sections.size() - 2;
    EXPECT_TRUE(says(looking_back::untriedWords(untried, counted(ReviewBy::section))));
    named<QCheckBox>("List the untried").setChecked(true);
    EXPECT_EQ(table().rowCount(), static_cast<int>(untried) + 3);
}

TEST_F(ProducedPage, IsPaleAndNotGivenAwayWhileItIsCountedAnew) {
    auto& save = named<QPushButton>("Save table…");
    EXPECT_FALSE(table().isFaint());
    EXPECT_TRUE(save.isEnabled());
    support::HeldJob held(open_.jobs());
    edits::addStays(open_, "Add", {stayIn(2, 14, 7)});
    day_->findChild<days::Refresher*>()->finish();
    EXPECT_TRUE(table().isFaint());
    EXPECT_FALSE(save.isEnabled());
    EXPECT_FALSE(named<QPushButton>("Copy picture").isEnabled());
    held.letGo();
    count();
    EXPECT_FALSE(table().isFaint());
    EXPECT_TRUE(save.isEnabled());
}

TEST_F(ProducedPage, TheSentencesInShortArePaleWhileTheyAreCountedAnew) {
    day_->steps().openStep(0);
    count();
    auto& copy = named<QPushButton>("Copy");
    EXPECT_TRUE(copy.isEnabled());
    const auto paleOnes = [&] {
        const auto labels = day_->findChildren<QLabel*>();
        return std::ranges::count_if(
            labels, [](const QLabel* label) { return label->isVisible() && !label->isEnabled(); });
    };
    EXPECT_EQ(paleOnes(), 0);
    support::HeldJob held(open_.jobs());
    edits::addStays(open_, "Add", {stayIn(2, 14, 7)});
    day_->findChild<days::Refresher*>()->finish();
    EXPECT_FALSE(copy.isEnabled());
    EXPECT_EQ(paleOnes(), 1);
    held.letGo();
    count();
    EXPECT_TRUE(copy.isEnabled());
    EXPECT_EQ(paleOnes(), 0);
}

TEST_F(ProducedPage, CountsAStayThatIsAdded) {
    edits::addStays(open_, "Add", {stayIn(2, 14, 7)});
    count();
    ASSERT_EQ(table().rowCount(), 4);
    EXPECT_EQ(table().words(0, 0), nameOf(2));
    EXPECT_EQ(table().words(3, 3), "12");
}

TEST_F(ProducedPage, LaysARowBesideAnotherAndNeverBesideItself) {
    table().selectRow(rowOf(nameOf(0)));
    turn();
    auto& with = named<QComboBox>("Beside it");
    const auto rows =
        looking_back::rowsThatMatter(counted(ReviewBy::section), ReviewBy::section, *open_.water(),
                                     open_.derived().bands, wording::Words());
    const auto row = [&](std::size_t section) {
        return *std::ranges::find(rows, nameOf(section), &looking_back::ProducedRow::name);
    };
    with.setCurrentText(nameOf(1));
    const QString both = looking_back::comparedWords(row(0), row(1));
    EXPECT_TRUE(both.startsWith(nameOf(0) + " gave 0.5 ")) << both.toStdString();
    EXPECT_TRUE(both.contains(nameOf(1) + " gave 4.0 ")) << both.toStdString();
    EXPECT_TRUE(says(both));
    with.setCurrentText(nameOf(0));
    EXPECT_FALSE(says(nameOf(0) + " gave"));
}

TEST_F(ProducedPage, ShadesTheChartByWhatIsCountedNow) {
    EXPECT_FALSE(chart_.content().rates);
    named<QCheckBox>("Shade the chart by it").setChecked(true);
    ASSERT_TRUE(chart_.content().rates);
    EXPECT_EQ(chart_.content().rates->by, ReviewBy::section);
    EXPECT_TRUE(chart_.content().rates->isTried(sections_->sections[1].name));
    // Until the other is counted nothing is shaded by what was counted before.
    auto& by = named<QComboBox>("By");
    by.setCurrentText(looking_back::titleOf(ReviewBy::zone));
    EXPECT_FALSE(chart_.content().rates && chart_.content().rates->by == ReviewBy::section);
    count();
    ASSERT_TRUE(chart_.content().rates);
    EXPECT_EQ(chart_.content().rates->by, ReviewBy::zone);
    by.setCurrentText(looking_back::titleOf(ReviewBy::bait));
    count();
    EXPECT_FALSE(chart_.content().rates) << "a bait is no place";
}

TEST_F(ProducedPage, GivesAwayAPictureOfWhatWasFishedAndDrawsBarsAsLongAsTheirRates) {
    const auto table = counted(ReviewBy::section);
    auto rows = looking_back::rowsThatMatter(table, ReviewBy::section, *open_.water(),
                                             open_.derived().bands, wording::Words());
    std::erase_if(rows, [](const looking_back::ProducedRow& row) { return !row.isTried(); });
    named<QPushButton>("Copy picture").click();
    EXPECT_EQ(QGuiApplication::clipboard()->image(),
              paper::renderRates(looking_back::calledByTheUser(rows, table),
                                 "Skarrow Water, fish by section", QSize(1200, 900)));
    const auto shown = day_->findChildren<widgets::IntervalBar*>();
    const auto bars = std::ranges::find_if(shown, &QWidget::isVisible);
    ASSERT_NE(bars, shown.end());
    widgets::IntervalBar same(widgets::rodsRole, (*bars)->parentWidget());
    std::vector<widgets::Interval> drawn;
    double most = 0.0; // a bar's doubt is cut off at four times its rate
    for (const looking_back::ProducedRow& row : rows) {
        const rates::Rate rate = row.counted.shrunk.value();
        most = std::max(most, std::min(rate.high, 4.0 * rate.per10RodHours));
        drawn.push_back({row.name, rate.per10RodHours, rate.low, rate.high,
                         wording::Words::rate(rate.per10RodHours), true});
    }
    same.setRows(drawn, most);
    same.resize((*bars)->size());
    EXPECT_EQ((*bars)->grab().toImage(), same.grab().toImage());
}

TEST_F(ProducedPage, SaysWhyItCannotCount) {
    typeDay("From day", "2026-10-04");
    typeDay("To day", "2026-10-02");
    EXPECT_TRUE(says("the first day is after the last"));
}

} // namespace
