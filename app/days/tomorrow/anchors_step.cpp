// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/widgets/plain_table.h"
#include "app/wording/cautions.h"

#include <QLabel>

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
        rods_ = new widgets::PlainTable(
            {tr("Rod"), tr("Bearing"), tr("Away"), tr("Depth"), tr("Stop knot")}, 8, this);
        addWide(rods_);
    }

    DayStepLine refresh() override {
        const marks::Mark* mark = chosenMark(context_);
        setWords(empty_, mark ? QString()
                              : tr("Find marks first; the anchors and rods of the "
                                   "chosen one stand here."));
        for (QWidget* widget : std::initializer_list<QWidget*>{heading_, anchors_, rods_}) {
            widget->setVisible(mark != nullptr);
        }
        if (mark == nullptr) {
            setWords(lie_, {});
            setWords(cautions_, {});
            return {tr("no mark"), false};
        }
        heading_->setText(QStringLiteral("%1  %2").arg(mark->rank).arg(markTitle(*mark, words())));
        anchors_->setRows(anchorRows(*mark, water().frame, words()));
        setWords(lie_, lieWords(*mark, words()));
        rods_->setRows(rodRows(*mark, words()));
        setWords(cautions_, wording::cautionsOf(*mark, words()).join('\n'));
        return {tr("mark %1: bow %2, stern %3")
                    .arg(mark->rank)
                    .arg(words().length(mark->anchors.bow.rope),
                         words().length(mark->anchors.stern.rope)),
                !context_.open.isPlanCurrent()};
    }

private:
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
