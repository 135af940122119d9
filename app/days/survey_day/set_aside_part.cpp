// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/set_aside_part.h"

#include "app/chart/verdict_now.h"
#include "app/days/survey_day/sounding_view.h"
#include "app/edits/set_aside_soundings.h"
#include "app/edits/take_back_soundings.h"
#include "app/widgets/plain_table.h"
#include "app/wording/spoken_names.h"

#include <QLabel>
#include <QLayout>
#include <QPushButton>

#include <algorithm>

namespace days::survey_day {

using side_view::BrushAct;

namespace {

constexpr int reasonsShown = 9;
constexpr int termsShown = 6;

} // namespace

SetAsidePart::SetAsidePart(SurveyContext context) : SurveyStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Set aside"));
    table_ = new widgets::PlainTable({tr("Reason"), tr("Soundings")}, reasonsShown, this);
    addWide(table_);
    connect(table_, &widgets::PlainTable::rowChosen, this, &SetAsidePart::chooseReason);
    layWalk();
    layHands();
    connect(&context_.chart, &ChartLink::selectionChanged, this, [this] { showSounding(); });
}

void SetAsidePart::layWalk() {
    state_ = addWords();
    previous_ = makeButton(tr("Previous"), QStringLiteral("Alt+Left"),
                           tr("The sounding before it that was set aside for the same reason"),
                           [this] { step(false); });
    next_ = makeButton(tr("Next"), QStringLiteral("Alt+Right"),
                       tr("The next sounding that was set aside for the same reason"),
                       [this] { step(true); });
    keep_ = makeButton(tr("Keep this one"), QStringLiteral("Alt+Up"),
                       tr("Draw with the sounding in the ring"),
                       [this] { judge(edits::takeBackSoundings); });
    aside_ = makeButton(tr("Set this one aside"), QStringLiteral("Alt+Down"),
                        tr("Draw without the sounding in the ring"),
                        [this] { judge(edits::setAsideSoundings); });
    addRow({previous_, next_});
    title_ = addWords();
    terms_ = new widgets::PlainTable({QString(), QString()}, termsShown, this);
    terms_->setSelectionMode(QAbstractItemView::NoSelection);
    terms_->setFocusPolicy(Qt::NoFocus);
    terms_->setAccessibleName(tr("How the depth of this sounding came about"));
    addWide(terms_);
    addRow({keep_, aside_});
}

void SetAsidePart::layHands() {
    addHeading(tr("Many at once"));
    ring_ = makeButton(tr("Set aside..."), QStringLiteral("Ctrl+D"),
                       tr("Go round soundings that are wrong on the chart, or brush over them in "
                          "the side view"),
                       [this] { askSoundings(BrushAct::setAside); });
    takeBack_ = makeButton(tr("Take back..."), QStringLiteral("Ctrl+B"),
                           tr("Go round soundings that are right although set aside on the chart, "
                              "or brush over them in the side view"),
                           [this] { askSoundings(BrushAct::takeBack); });
    for (QPushButton* hand : {ring_, takeBack_}) {
        hand->setCheckable(true);
    }
    connect(&context_.chart, &ChartLink::askingChanged, this, [this] {
        ring_->setChecked(context_.chart.brush() == BrushAct::setAside);
        takeBack_->setChecked(context_.chart.brush() == BrushAct::takeBack);
    });
    addRow({ring_, takeBack_});
}

DayStepLine SetAsidePart::refreshFrom(const ViewInput& input) {
    const CheckView view = checkViewOf(input);
    reasons_ = view.reasons;
    table_->setVisible(!view.setAside.empty());
    table_->setRows(view.setAside);
    const auto row = reason_ ? std::ranges::find(reasons_, *reason_) : reasons_.end();
    table_->chooseQuietly(row == reasons_.end() ? -1 : static_cast<int>(row - reasons_.begin()));
    ring_->setEnabled(input.derived.checked != nullptr);
    takeBack_->setEnabled(!view.setAside.empty());
    showSounding();
    return {};
}

SetAsideWalk SetAsidePart::walk() const {
    const auto checked = context_.open.derived().checked;
    return checked && reason_ ? SetAsideWalk(water().days, checked, *reason_) : SetAsideWalk();
}

void SetAsidePart::chooseReason(int row) {
    if (row >= 0 && row < static_cast<int>(reasons_.size())) {
        reason_ = reasons_[static_cast<std::size_t>(row)];
        context_.chart.selectSounding(walk().after(std::nullopt));
        context_.chart.showChosen();
    }
}

void SetAsidePart::step(bool isForward) {
    const auto chosen = context_.chart.selection().sounding;
    const SetAsideWalk all = walk();
    if (const auto next = isForward ? all.after(chosen) : all.before(chosen)) {
        context_.chart.selectSounding(next);
        context_.chart.showChosen();
    }
}

void SetAsidePart::judge(Edit edit) {
    if (const auto chosen = context_.chart.selection().sounding) {
        water::SoundingChoice choice(water().days.size());
        choice[static_cast<std::size_t>(chosen->day)] = {chosen->sounding};
        edit(context_.open, choice);
    }
}

void SetAsidePart::askSoundings(BrushAct act) {
    if (context_.chart.brush() == act) {
        context_.chart.stopAsking(); // The same button again.
        return;
    }
    context_.chart.askSoundings(
        act == BrushAct::setAside
            ? tr("To set aside: with the button held, go round soundings on the chart or brush "
                 "over them in the side view")
            : tr("To take back: with the button held, go round soundings on the chart or brush "
                 "over them in the side view"),
        act, [this, act](const water::SoundingChoice& choice) { take(act, choice); });
}

void SetAsidePart::take(BrushAct act, const water::SoundingChoice& choice) {
    // Positions hold for the days as they were looked over.
    if (!chart::isLookedOver(context_.chart.content())) {
        tell({base::ErrorKind::wrongUse, "the soundings are just being looked over again", "",
              "go over them once more when that is done"});
        return;
    }
    std::size_t count = 0;
    for (const auto& day : choice) {
        count += day.size();
    }
    if (count > 0) {
        (act == BrushAct::setAside ? edits::setAsideSoundings
                                   : edits::takeBackSoundings)(context_.open, choice);
    }
    emit context_.open.happened(
        (act == BrushAct::setAside ? tr("%1 set aside.") : tr("%1 taken back."))
            .arg(wording::Words::count(count)));
}

void SetAsidePart::hideEvent(QHideEvent* event) {
    SurveyStep::hideEvent(event);
    if (context_.chart.brush()) {
        context_.chart.stopAsking();
    }
}

void SetAsidePart::showSounding() {
    const auto chosen = context_.chart.selection().sounding;
    const auto view = chosen ? soundingViewOf(input(), *chosen) : std::optional<SoundingView>();
    // What is pointed at in chart or side view opens the walk through its own reason.
    if (view && view->held != soundings::Verdict::kept && !walk().positionOf(*chosen)) {
        reason_ = view->held;
        const auto row = std::ranges::find(reasons_, *reason_);
        table_->chooseQuietly(row == reasons_.end() ? -1
                                                    : static_cast<int>(row - reasons_.begin()));
    }
    const SetAsideWalk all = walk();
    previous_->setEnabled(all.size() > 0);
    next_->setEnabled(all.size() > 0);
    setWords(state_, walkWords(all, reason_, chosen));
    keep_->setEnabled(view && view->held != soundings::Verdict::kept);
    aside_->setEnabled(view && view->held == soundings::Verdict::kept);
    for (QWidget* widget : std::initializer_list<QWidget*>{terms_, keep_, aside_}) {
        widget->setVisible(view.has_value());
    }
    setWords(title_,
             view ? tr("%1: %2\n%3").arg(view->title, view->verdict, view->place) : QString());
    if (view) {
        terms_->setRows(view->terms);
    }
}

} // namespace days::survey_day
