// The blank measuring form that goes to the bench and to the tractor: one leaf, filled in by hand, from which a job file is written.
//
// What it asks for is what a job file holds, in words, in the order of the bench: on the front the shaft, still together; on the back
// its halves, parted, and what is measured on the machine: the lengths, or the machine's own dimensions. For another tractor or
// machine, such a leaf again. Every length is drawn where it is measured. Nothing is computed here.
// Checked for every series, paper and unit by its rectangles, and against the attributes of config/job.xsd
// (tests/documents/form).
#pragma once

#include <string>
#include <vector>

#include "shaftcut/documents/form/measuring_form.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "wording.hpp"

namespace shaftcut {

// The leaf's front and back; of the form that asks what tells a series, one page. Throws FontFault.
std::vector<Page> draw_measuring_form(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w);

// "measuring-form", "measuring-form-Alder-2", "measuring-form-Alder-2-trailed", "identify-form", before its suffix: what is neither a letter, a digit, ".",
// "_" nor beyond ASCII becomes "-".
std::string measuring_form_name(const MeasuringForm& form);

// Its PDF. Dated 2000-01-01, so that its bytes stay the same. Throws FontFault and DrawingFault.
std::string measuring_form_pdf(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w);

}  // namespace shaftcut
