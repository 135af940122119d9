// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/section_changes_part.h"
#include "app/days/survey_day/sections_view.h"
#include "app/days/survey_day/steps.h"
#include "app/edits/change_settings.h"
#include "app/edits/name_section.h"
#include "app/widgets/fact_list.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_amount.h"

#include <QLabel>
#include <QPushButton>

#include <optional>
#include <tuple>

namespace days::survey_day {

namespace {

const QString proposeKey = QStringLiteral("Ctrl+Shift+M");
constexpr int rowsShown = 9; // so that the card below can be seen without scrolling

class SectionsStep : public SurveyStep {
public:
    explicit SectionsStep(SurveyContext context) : SurveyStep(context) {
        wanted_ = addAmount(
            {tr("Wanted size"), tr("What one outing can cover"),
             [this](const QString& text) { return text.isEmpty() || areaOf(text).has_value(); },
             tr("chosen from the fishable water"),
             tr("an area such as 4 ha or 10 acres, or nothing")},
            [this](const QString& text) {
                tellIfWrong(edits::changeSettings(
                    context_.open, tr("Set size of sections"),
                    [&](water::Settings& s) { s.sectionArea = areaOf(text); }));
            });
        table_ = new widgets::PlainTable(
            {tr("Section"), tr("Area"), tr("Mean"), tr("Weed"), tr("Fished")}, rowsShown, this);
        table_->setEditableColumn(0);
        table_->setAccessibleName(tr("Sections"));
        addWide(table_);
        coverage_ = addWords();
        name_ = addHeading({});
        propose_ = makeButton({}, proposeKey,
                              tr("The section that is chosen is called after the place nearest to "
                                 "it on the chart"),
                              [this] { takeProposal(); });
        addRow({propose_});
        card_ = new widgets::FactList(this);
        addWide(card_);
        changes_ = new SectionChangesPart(context);
        addWide(changes_);
        anew_ = makeButton(tr("Divide anew"), {},
                           tr("Without regard to the borders there are; numbers and names stay "
                              "with their water"),
                           [this] { context_.open.divideAfresh(); });
        addRow({anew_});
        auto* help = addWords();
        setWords(help,
                 tr("Double-click a name, or press F2, to give your own. Number, name and borders "
                    "stay when the water is drawn again; new water gets new numbers, and no "
                    "number is ever that of other water. Click a section on the chart to "
                    "choose it; a ring ○ before its name says that it was never fished."));
        connect(table_, &widgets::PlainTable::rowChosen, this, &SectionsStep::choose);
        connect(table_, &widgets::PlainTable::typedOver, this,
                [this](int row, const QString& name) {
                    edits::nameSection(context_.open, static_cast<sections::SectionNumber>(row),
                                       name.trimmed());
                });
        connect(&context_.chart, &ChartLink::contentChanged, this, [this] { showChosen(); });
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        countAnew(input);
        const SectionsView view = sectionsViewOf(input, count_);
        wanted_->setPlaceholderText(tr("%1 (chosen)").arg(view.wanted));
        wanted_->showAmount(input.water.settings.sectionArea ? view.wanted : QString());
        table_->setVisible(!view.rows.empty());
        table_->setRows(view.rows);
        setWords(coverage_, view.coverage);
        anew_->setVisible(!view.rows.empty());
        view_ = view;
        showChosen();
        changes_->refresh();
        return {view.state, input.isStale(water::Step::sections)};
    }

private:
    /// What a count stands on.
    using CountOf = std::tuple<logbook::KeptLog, std::shared_ptr<const sections::SectionMap>,
                               logbook::Wind, units::Length>;

    /// Counts again where what the count stands on has changed; until it is done there is none.
    void countAnew(const ViewInput& input) {
        const marks::Plan& plan = input.water.plan;
        const CountOf now{input.water.log, input.derived.sections, plan.day.wind, plan.tackle.cast};
        if (countOf_ == now) {
            return;
        }
        countOf_ = now;
        count_ = {};
        if (!input.derived.sections) {
            return;
        }
        startJob<SectionsCounted>(
            tr("Counting the use of the sections"),
            [water = context_.open.water(), derived = context_.open.derived()](base::Progress&)
                -> base::Result<SectionsCounted> { return countSections(*water, derived); },
            [this, now](base::Result<SectionsCounted> made) {
                if (made && countOf_ == now) {
                    count_ = std::move(*made);
                    emit lineChanged();
                } else if (countOf_ == now) {
                    countOf_.reset(); // stopped: to be asked again
                }
            });
    }

    std::optional<units::Area> areaOf(const QString& text) const {
        const auto area = wording::areaTyped(text, context_.preferences.units());
        return area && area->inHectares() >= 0.1 && area->inHectares() <= 1000.0 ? area
                                                                                 : std::nullopt;
    }
    void choose(int row) {
        const auto map = context_.open.derived().sections;
        if (map && row >= 0 && row < static_cast<int>(map->sections.size())) {
            context_.chart.selectSection(row);
            context_.chart.lookAt(map->sections[static_cast<std::size_t>(row)].middle);
        } else {
            context_.chart.selectSection(std::nullopt);
        }
    }
    void takeProposal() {
        const int chosen = table_->chosen();
        if (chosen >= 0 && chosen < static_cast<int>(view_.proposals.size())) {
            edits::nameSection(context_.open, static_cast<sections::SectionNumber>(chosen),
                               view_.proposals[static_cast<std::size_t>(chosen)]);
        }
    }
    void showChosen() {
        const int chosen = context_.chart.content().selection.section.value_or(-1);
        // A row that was clicked must not move away from under the pointer.
        const bool isFromChart = chosen != table_->chosen() && !table_->hasFocus();
        table_->chooseQuietly(chosen);
        const bool isOne = chosen >= 0 && chosen < static_cast<int>(view_.cards.size());
        const auto at = static_cast<std::size_t>(isOne ? chosen : 0);
        setWords(name_, isOne ? view_.rows[at].front() : QString());
        const QString proposal = isOne ? view_.proposals[at] : QString();
        propose_->setVisible(!proposal.isEmpty());
        propose_->setText(tr("Name it %1").arg(QString(proposal).replace('&', "&&")));
        propose_->setShortcut(QKeySequence(proposeKey)); // A new text takes the key away.
        card_->setFacts(isOne ? view_.cards[at] : std::vector<widgets::Fact>());
        if (isOne && isFromChart) {
            bringIntoView(card_);
        }
    }

    widgets::AmountField* wanted_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QLabel* coverage_ = nullptr;
    QLabel* name_ = nullptr;
    QPushButton* propose_ = nullptr;
    QPushButton* anew_ = nullptr;
    widgets::FactList* card_ = nullptr;
    SectionsView view_;
    std::optional<CountOf> countOf_;
    SectionsCounted count_;
    SectionChangesPart* changes_ = nullptr;
};

} // namespace

SurveyStep* makeSectionsStep(SurveyContext context) {
    return new SectionsStep(context);
}

} // namespace days::survey_day
