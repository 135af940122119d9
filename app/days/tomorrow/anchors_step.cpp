// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/lay_by_hand.h"
#include "app/widgets/plain_table.h"
#include "app/wording/cautions.h"

#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace days::tomorrow {

namespace {

class AnchorsStep : public DayStep {
public:
    explicit AnchorsStep(DayContext context) : DayStep(context) {
        empty_ = addWords();
        heading_ = addHeading({});
        cautions_ = addWarning();
        anchors_ = new widgets::PlainTable({tr("Anchor"), tr("Depth"), tr("Rope")}, 2, this);
        addWide(anchors_);
        lie_ = addWords();
        anchors_->setAccessibleName(tr("Anchors"));
        rods_ = new widgets::PlainTable(
            {tr("Rod"), tr("Bearing"), tr("Away"), tr("Depth"), tr("Stop knot")}, 8, this);
        rods_->setAccessibleName(tr("Rods"));
        addWide(rods_);
        connect(rods_, &widgets::PlainTable::rowChosen, this, [this](int row) {
            context_.chart.selectRod(row < 0 ? std::nullopt
                                             : std::optional(static_cast<std::size_t>(row)));
        });
        whole_ = makeButton(tr("Cut along the ropes"), {},
                            tr("The cut leads along the cast of the rod that is chosen; back to "
                               "the ropes"),
                            [this] { context_.chart.selectRod(std::nullopt); });
        hint_ = addWords();
        free_ = makeButton(tr("Lay as found"), {},
                           tr("Give anchors and baits of this mark back to the program; it can be "
                              "undone"),
                           [this] { free(); });
        addRow({whole_, free_});
        connect(&context_.chart, &ChartLink::triedChanged, this, [this] { showLie(); });
    }

    DayStepLine refresh() override {
        const marks::Mark* mark = chosenMark(context_);
        setWords(empty_, mark ? QString()
                              : tr("Find marks first; the anchors and rods of the "
                                   "chosen one stand here."));
        for (QWidget* widget :
             std::initializer_list<QWidget*>{heading_, anchors_, rods_, free_, whole_}) {
            widget->setVisible(mark != nullptr);
        }
        if (mark == nullptr) {
            setWords(lie_, {});
            setWords(cautions_, {});
            setWords(hint_, {});
            return {tr("no mark"), false};
        }
        heading_->setText(QStringLiteral("%1  %2").arg(mark->rank).arg(markTitle(*mark, words())));
        showLie();
        setWords(hint_, tr("Boat, anchors and baits can be dragged on the chart; Esc while you "
                           "drag takes it back."));
        const water::LaidByHand* laid = laidOf(*mark);
        const auto& rod = context_.chart.selection().rod;
        rods_->chooseQuietly(rod ? static_cast<int>(*rod) : -1);
        whole_->setEnabled(rod.has_value());
        free_->setEnabled(laid != nullptr && laid->isAny());
        return {ropesLine(*mark, words()), !context_.open.isPlanCurrent()};
    }

private:
    /// As planned, or while it is dragged as it would be.
    void showLie() {
        const marks::Mark* mark = chosenMark(context_);
        const auto& tried = context_.chart.tried();
        if (tried && mark != nullptr && tried->mark.rank == mark->rank) {
            mark = &tried->mark;
        }
        if (mark == nullptr) {
            return;
        }
        anchors_->setRows(anchorRows(*mark, water().frame, words()));
        setWords(lie_, lieWords(*mark, words()));
        rods_->setRows(rodRows(*mark, words()));
        setWords(cautions_, wording::cautionsOf(*mark, words()).join('\n'));
    }

    /// Null where the mark is none of the user's own.
    [[nodiscard]] const water::LaidByHand* laidOf(const marks::Mark& mark) const {
        const geo::LonLat place = pinnedPlaceOf(water(), mark);
        const auto pin = std::ranges::find(water().pinnedMarks, place, &water::PinnedMark::place);
        return pin == water().pinnedMarks.end() ? nullptr : &pin->laid;
    }

    void free() {
        if (const marks::Mark* mark = chosenMark(context_)) {
            edits::freeLie(context_.open, pinnedPlaceOf(water(), *mark));
        }
    }

    QLabel* hint_ = nullptr;
    QPushButton* free_ = nullptr;
    QPushButton* whole_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* heading_ = nullptr;
    widgets::PlainTable* anchors_ = nullptr;
    QLabel* lie_ = nullptr;
    widgets::PlainTable* rods_ = nullptr;
    QLabel* cautions_ = nullptr;
};

} // namespace

DayStep* makeAnchorsStep(DayContext context) {
    return new AnchorsStep(context);
}

} // namespace days::tomorrow
