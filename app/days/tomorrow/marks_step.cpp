// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/banned_part.h"
#include "app/days/tomorrow/own_marks_part.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/pin_mark.h"
#include "app/edits/set_plan.h"
#include "app/edits/unpin_mark.h"
#include "app/widgets/ink_roles.h"
#include "app/widgets/interval_bar.h"
#include "app/widgets/plain_table.h"
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"
#include "app/wording/tongue.h"
#include "core/water/document/known_marks.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>

#include <algorithm>

namespace days::tomorrow {

namespace {

constexpr int rowsShown = 10;

class MarksStep : public DayStep {
public:
    explicit MarksStep(DayContext context) : DayStep(context) {
        toMind_ = addWarning();
        empty_ = addWords();
        count_ = new QSpinBox(this);
        count_->setRange(1, 40);
        addField(tr("How many"), count_, tr("Marks wanted"));
        connect(count_, &QSpinBox::valueChanged, this, [this](int count) {
            edits::setPlan(context_.open, tr("Set number of marks"),
                           [count](marks::Plan& plan) { plan.count = count; });
        });
        table_ = new widgets::PlainTable({tr("Mark"), tr("Depth"), tr("Score")}, rowsShown, this);
        table_->setAccessibleName(tr("Marks"));
        addWide(table_);
        setProperty(keysGoTo, QVariant::fromValue<QWidget*>(table_));
        old_ = addWords(); // Below the list, which so lies still under the hand.
        old_->setProperty("voice", "wrong");
        connect(table_, &widgets::PlainTable::rowChosen, this, &MarksStep::choose);
        heading_ = addHeading({});
        cautions_ =
            addWarning(); // Before what speaks for the mark, so that it is not below the fold.
        expected_ = addWords();
        bars_ = new widgets::IntervalBar(widgets::barRole, this);
        addWide(bars_);
        reasons_ = addWords();
        pin_ =
            makeButton(tr("Keep"), QStringLiteral("Ctrl+P"),
                       tr("Keep this mark where it is, whatever changes"), [this] { turnPin(); });
        addRow({makeButton(tr("Find marks"), QStringLiteral("Ctrl+M"),
                           tr("Work out tomorrow's marks again"),
                           [this] { context_.open.planTomorrow(); }),
                pin_});
        own_ = new OwnMarksPart(context);
        addWide(own_);
        banned_ = new BannedPart(context);
        addWide(banned_);
    }

    DayStepLine refresh() override {
        const auto planned = context_.open.planned();
        const bool isOld = planned && !context_.open.isPlanCurrent();
        const QSignalBlocker quiet(count_);
        count_->setValue(water().plan.count);
        const QString grave =
            planned ? wording::toMindFirst(*planned, words()).join('\n') : QString();
        QStringList basis = planned ? wording::basisOf(*planned, words()) : QStringList();
        basis.removeIf([&grave](const QString& line) { return grave.contains(line); });
        setWords(toMind_, grave);
        setWords(empty_, planned ? basis.join('\n')
                                 : tr("No marks yet. Draw the water on the survey day, then find "
                                      "marks."));
        setWords(old_, oldPlanWords(context_));
        table_->setVisible(planned != nullptr);
        table_->setFaint(isOld);
        table_->setRows(planned ? markRows(*planned, words()) : std::vector<QStringList>());
        showChosen();
        own_->refresh();
        banned_->refresh();
        if (!planned) {
            return {tr("none yet"), false};
        }
        return {tr("%1 of %2 looked at").arg(planned->marks.size()).arg(planned->looked), isOld};
    }

private:
    void choose(int row) {
        const auto planned = context_.open.planned();
        if (planned && row >= 0 && row < static_cast<int>(planned->marks.size())) {
            const marks::Mark& mark = planned->marks[static_cast<std::size_t>(row)];
            context_.chart.selectMark(mark.rank);
            context_.chart.lookAt(mark.place);
        }
    }

    void showChosen() {
        const marks::Mark* mark = chosenMark(context_);
        for (QWidget* widget : std::initializer_list<QWidget*>{heading_, bars_}) {
            widget->setVisible(mark != nullptr);
        }
        pin_->setEnabled(mark != nullptr);
        if (mark == nullptr) {
            for (QLabel* label : {expected_, reasons_, cautions_}) {
                setWords(label, {});
            }
            return;
        }
        const auto planned = context_.open.planned();
        table_->chooseQuietly(static_cast<int>(mark - planned->marks.data()));
        heading_->setText(QStringLiteral("%1  %2").arg(mark->rank).arg(markTitle(*mark, words())));
        showFactors(*mark);
        setWords(expected_, expectedWords(*mark));
        setWords(reasons_, furtherReasons(*mark, words()).join('\n'));
        setWords(cautions_, wording::cautionsOf(*mark, words()).join('\n'));
        pin_->setText(mark->isPinned ? tr("Let go") : tr("Keep"));
        pin_->setShortcut(QKeySequence(QStringLiteral("Ctrl+P")));
    }

    /// What each reason multiplies the water's mean by, and why, the weightiest first.
    void showFactors(const marks::Mark& mark) {
        std::vector<widgets::Interval> rows;
        double most = 1.0;
        for (const marks::Factor& factor : weighty(mark)) {
            rows.push_back({factorTitle(factor.kind), factor.times, factor.times, factor.times,
                            QStringLiteral("×%1").arg(wording::Tongue::number(factor.times, 2)),
                            true, wording::said(factor.because, words())});
            most = std::max(most, factor.times);
        }
        bars_->setRows(std::move(rows), most);
    }

    void turnPin() {
        const marks::Mark* mark = chosenMark(context_);
        if (mark == nullptr) {
            return;
        }
        const geo::LonLat place = pinnedPlaceOf(water(), *mark);
        if (mark->isPinned) {
            edits::unpinMark(context_.open, place);
        } else {
            edits::pinMark(context_.open, place, {mark->name, mark->lonLat});
        }
    }

    QLabel* toMind_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* old_ = nullptr;
    QSpinBox* count_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QLabel* heading_ = nullptr;
    widgets::IntervalBar* bars_ = nullptr;
    QLabel* expected_ = nullptr;
    QLabel* reasons_ = nullptr;
    QLabel* cautions_ = nullptr;
    QPushButton* pin_ = nullptr;
    OwnMarksPart* own_ = nullptr;
    BannedPart* banned_ = nullptr;
};

} // namespace

const marks::Mark* chosenMark(const DayContext& context) {
    const auto planned = context.open.planned();
    if (!planned || planned->marks.empty()) {
        return nullptr;
    }
    const int rank = context.chart.content().selection.mark.value_or(planned->marks.front().rank);
    const auto found = std::ranges::find(planned->marks, rank, &marks::Mark::rank);
    return found == planned->marks.end() ? &planned->marks.front() : &*found;
}

QString oldPlanWords(const DayContext& context) {
    const open_water::OpenWater& open = context.open;
    if (!open.planned() || open.isPlanCurrent()) {
        return {};
    }
    if (open.isBeingMade()) {
        return wording::Tongue::tr("Older than your last change: being worked out anew.");
    }
    return open.whyNoPlan()
               ? wording::Tongue::tr("Older than your last change, and cannot be worked out "
                                     "anew: %1.")
                     .arg(wording::Tongue::sentence(*open.whyNoPlan()))
               : wording::Tongue::tr("Older than your last change.");
}

geo::LonLat pinnedPlaceOf(const water::Water& water, const marks::Mark& mark) {
    const bool hasPlace = mark.pinnedAt && water.frame;
    const geo::LonLat put = hasPlace ? water.frame->toEarth(*mark.pinnedAt) : mark.lonLat;
    for (const water::PinnedMark& pin : water.pinnedMarks) {
        if (mark.isPinned && water::isOneMark(pin.place, put)) {
            return pin.place;
        }
    }
    return put;
}

DayStep* makeMarksStep(DayContext context) {
    return new MarksStep(context);
}

} // namespace days::tomorrow
