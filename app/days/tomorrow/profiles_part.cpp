// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/profiles_part.h"

#include "app/edits/belief_profiles.h"
#include "app/widgets/plain_table.h"

#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

namespace days::tomorrow {

namespace {
constexpr int rowsShown = 5;
} // namespace

ProfilesPart::ProfilesPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Saved beliefs"));
    table_ = new widgets::PlainTable({QString(), QString()}, rowsShown, this);
    table_->setAccessibleName(tr("Saved beliefs"));
    table_->setEditableColumn(0);
    addWide(table_);
    connect(table_, &widgets::PlainTable::rowChosen, this, [this] { showButtons(); });
    connect(table_, &widgets::PlainTable::typedOver, this, &ProfilesPart::rename);
    connect(table_, &widgets::PlainTable::removeAsked, this,
            [this](int row) { edits::removeProfile(context_.open, nameAt(row)); });
    name_ = new QLineEdit(this);
    name_->setPlaceholderText(tr("such as windy autumn"));
    addField(tr("Save as"), name_,
             tr("A name for what the sliders say now; it stays with this water"));
    connect(name_, &QLineEdit::textChanged, this, [this] { showButtons(); });
    connect(name_, &QLineEdit::returnPressed, this, [this] { save(); });
    about_ = addWords();
    save_ = makeButton(tr("Save"), {}, tr("Save what the sliders say now under this name"),
                       [this] { save(); });
    use_ = makeButton(tr("Use"), {}, tr("Put the sliders where the chosen beliefs have them"),
                      [this] { edits::takeProfile(context_.open, chosen()); });
    remove_ = makeButton(tr("Forget"), {}, tr("Remove the chosen beliefs; it can be undone"),
                         [this] { edits::removeProfile(context_.open, chosen()); });
    addRow({save_, use_, remove_});
}

DayStepLine ProfilesPart::refresh() {
    std::vector<QStringList> rows;
    for (const water::BeliefProfile& profile : water().beliefProfiles) {
        rows.push_back({QString::fromStdString(profile.name),
                        profile.weights == water().plan.weights ? tr("in use") : QString()});
    }
    table_->setVisible(!rows.empty());
    table_->setRows(std::move(rows));
    showButtons();
    return {};
}

std::string ProfilesPart::nameAt(int row) const {
    const auto& profiles = water().beliefProfiles;
    return row >= 0 && row < static_cast<int>(profiles.size())
               ? profiles[static_cast<std::size_t>(row)].name
               : std::string();
}

std::string ProfilesPart::chosen() const {
    return nameAt(table_->chosen());
}

void ProfilesPart::save() {
    const std::string name = name_->text().trimmed().toStdString();
    if (!name.empty()) {
        edits::saveProfile(context_.open, name);
        name_->clear();
    }
}

void ProfilesPart::rename(int row, const QString& name) {
    edits::nameProfile(context_.open, nameAt(row), name.trimmed().toStdString());
}

void ProfilesPart::showButtons() {
    const std::string typed = name_->text().trimmed().toStdString();
    const bool isKnown =
        std::ranges::find(water().beliefProfiles, typed, &water::BeliefProfile::name) !=
        water().beliefProfiles.end();
    setWords(about_, isKnown ? tr("Saving replaces what this name holds now.") : QString());
    save_->setEnabled(!typed.empty());
    use_->setEnabled(!chosen().empty());
    remove_->setEnabled(!chosen().empty());
}

} // namespace days::tomorrow
