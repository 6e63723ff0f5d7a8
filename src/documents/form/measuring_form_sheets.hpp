// The blank measuring form that goes to the tractor: sheets filled in by hand, from which a job file is written.
//
// What it asks for is what a job file holds, by the same words (docs/job-format.md), in the order of the bench: sheet 1 the shaft,
// still together; sheet 2 its halves, parted, and how the lengths are measured; sheet 3 the lengths at the machine, or, instead of
// it, the sheet with the dimensions of a trailed or of a mounted machine; for another tractor or machine, such a sheet again. Every length is drawn where it is measured. Nothing is
// computed here.
// Checked for every series, paper and unit by its rectangles, and against the attributes of config/job.xsd
// (tests/documents/measuring_form*_test.cpp).
#pragma once

#include <string>
#include <vector>

#include "shaftcut/documents/form/measuring_form.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "wording.hpp"

namespace shaftcut {

// The five sheets: shaft, halves, lengths at the machine, trailed machine, mounted machine. Throws FontFault.
std::vector<Page> draw_measuring_form(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w);

// "measuring-form", "measuring-form-Alder-2", before its suffix: what is neither a letter, a digit, ".", "_" nor beyond ASCII becomes "-".
std::string measuring_form_name(const MeasuringForm& form);

// Its PDF. Dated 2000-01-01, so that its bytes stay the same. Throws FontFault and DrawingFault.
std::string measuring_form_pdf(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w);

}  // namespace shaftcut
