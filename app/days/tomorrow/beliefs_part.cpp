// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/beliefs_part.h"

#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/widgets/ink_roles.h"
#include "app/widgets/interval_bar.h"
#include "app/wording/tongue.h"

#include <QLabel>
#include <QLayout>

#include <algorithm>

namespace days::tomorrow {

BeliefsPart::BeliefsPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Beliefs and record"));
    basis_ = addWords();
    old_ = addWarning();
    bars_ = new widgets::IntervalBar(widgets::barRole, this);
    bars_->setAccessibleName(tr("What the log says"));
    bars_->setToolTip(tr("What your log multiplies the catch by; the pale bar holds it with 80 %"));
    addWide(bars_);
    for (std::size_t i = 0; i < marks::allFactorKinds.size(); ++i) {
        rows_.push_back(addWords());
    }
}

DayStepLine BeliefsPart::refresh() {
    const auto planned = context_.open.planned();
    setWords(basis_,
             !planned ? tr("Once marks are found, your log is heard here on each belief.")
             : planned->meanPer10RodHours
                 ? tr("What your log says of each belief, for a boat that lies right on it.")
                 : tr("Nothing caught yet: by your beliefs alone."));
    setWords(old_, oldPlanWords(context_));
    std::vector<widgets::Interval> bars;
    double most = 1.0;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const bool isKnown = planned && i < planned->beliefs.size();
        setWords(rows_[i],
                 isKnown ? beliefRow(planned->beliefs[i], planned->meanPer10RodHours.has_value())
                         : QString());
        if (isKnown && planned->beliefs[i].log) {
            const auto& log = *planned->beliefs[i].log;
            bars.push_back({factorTitle(planned->beliefs[i].kind), log.times, log.low, log.high,
                            QStringLiteral("×%1").arg(wording::Tongue::number(log.times, 2)),
                            true});
            most = std::max(most, log.high);
        }
    }
    bars_->setVisible(!bars.empty());
    bars_->setRows(std::move(bars), most);
    return {};
}

} // namespace days::tomorrow
