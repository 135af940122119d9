// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/season_view.h"
#include "app/days/looking_back/steps.h"
#include "app/days/where_to_save.h"
#include "app/widgets/plain_table.h"
#include "app/wording/counted_words.h"

#include <QPushButton>

namespace days::looking_back {

namespace {

class SeasonStep : public DayStep {
public:
    explicit SeasonStep(DayContext context) : DayStep(context) {
        table_ = new widgets::PlainTable(
            {tr("Month"), tr("trips"), tr("stays"), tr("blanks"), tr("fish")}, 16, this);
        addWide(table_);
        page_ = makeButton(tr("The season on a page…"), {},
                           tr("What it says in words, where, when, and the map, as a PDF"),
                           [this] { askPage(); });
        addRow({page_});
    }

    DayStepLine refresh() override {
        const auto rows = seasonRows(sumOf(water().log, water().clock));
        table_->setRows(rows);
        page_->setEnabled(!rows.empty());
        return {wording::monthsCounted(static_cast<qint64>(rows.size())), false};
    }

private:
    void askPage() {
        const QString path = askWhereToSave(*this, context_.open, tr("Save the season as a page"),
                                            QStringLiteral("season.pdf"), tr("PDF (*.pdf)"));
        if (path.isEmpty()) {
            return;
        }
        // Its map is of now, or it is not made.
        context_.open.whenMapIsCurrent(
            [step = QPointer<SeasonStep>(this), path](const base::Result<void>& map) {
                if (!step) {
                    return;
                }
                map ? step->savePage(path) : step->tell(map.error());
            });
    }

    void savePage(const QString& path) {
        startJob<int>(
            tr("Writing the season"),
            [content = context_.chart.content(), sum = sumOf(water().log, water().clock),
             path](base::Progress& progress) -> base::Result<int> {
                const auto page = seasonPage(content, sum, progress);
                return page ? paper::saveSeasonPage(path.toStdString(), *page)
                            : base::Result<int>(std::unexpected(page.error()));
            },
            [this, path](const base::Result<int>& pages) {
                if (pages) {
                    emit context_.open.happened(tr("The season is in %1.").arg(path));
                } else {
                    tell(pages.error());
                }
            });
    }

    widgets::PlainTable* table_ = nullptr;
    QPushButton* page_ = nullptr;
};

} // namespace

DayStep* makeSeasonStep(DayContext context) {
    return new SeasonStep(context);
}

} // namespace days::looking_back
