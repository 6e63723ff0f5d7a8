"""The bench page in a browser: what a hand does on it, and what an eye reads."""
import tempfile
import time
import xml.etree.ElementTree as ElementTree

from selenium import webdriver
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys

OPTIONS = ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
           "--disable-component-update", "--disable-sync", "--hide-scrollbars", "--force-device-scale-factor=1"]
SIZES = [(390, 844), (768, 1024), (1024, 768), (1920, 1080)]
KEYS = {"half": "tube", "end": "side", "longest": "when", "angle": "side", "cross": "at", "tube": "tube"}
COUNTED = {"fit", "other-tractor"}


def browser(width=1024, height=768, touch=False, downloads=None):
    options = webdriver.ChromeOptions()
    options.binary_location = "/usr/bin/chromium"
    for option in OPTIONS + [f"--user-data-dir={tempfile.mkdtemp()}", f"--window-size={width},{height}"]:
        options.add_argument(option)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    if downloads:
        options.add_experimental_option("prefs", {"download.default_directory": downloads, "download.prompt_for_download": False})
    driver = webdriver.Chrome(service=Service("/usr/bin/chromedriver"), options=options)
    driver.set_script_timeout(30)
    size(driver, width, height, touch)
    return driver


def size(driver, width, height, touch=False):
    driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": touch})
    driver.execute_cdp_cmd("Emulation.setTouchEmulationEnabled", {"enabled": touch})


def until(condition, seconds=10):
    """What `condition` gives once it gives something."""
    end = time.monotonic() + seconds
    while True:
        found = condition()
        if found:
            return found
        if time.monotonic() > end:
            raise AssertionError(f"not within {seconds} s: {condition}")
        time.sleep(0.03)


def attributes_of(xml):
    """Every attribute of a job, (path as the page names it, value), in the file's order."""
    found = []

    def walk(element, path):
        key = KEYS.get(element.tag)
        for name, value in element.attrib.items():
            if name != key:
                found.append((f"{path}@{name}", value))
        counts = {}
        for child in element:
            counts[child.tag] = counts.get(child.tag, 0) + 1
            step = child.tag
            if child.tag in KEYS and child.get(KEYS[child.tag]):
                step += f"[{KEYS[child.tag]}={child.get(KEYS[child.tag])}]"
            elif child.tag in COUNTED:
                step += f"[{counts[child.tag]}]"
            walk(child, f"{path}/{step}" if path else step)

    walk(ElementTree.fromstring(xml), "")
    return found


class Page:
    def __init__(self, driver, address):
        self.driver, self.address = driver, address

    def open(self):
        self.driver.get(self.address)
        self.ready()

    def ready(self):
        until(lambda: self.js("return !document.body.classList.contains('loading')"))

    def js(self, script, *arguments):
        return self.driver.execute_script(script, *arguments)

    def all(self, selector):
        return self.driver.find_elements(By.CSS_SELECTOR, selector)

    def one(self, selector):
        found = self.all(selector)
        assert found, f"nothing on the page is {selector}"
        return found[0]

    def bring(self, element):
        """Opens what folds over it and scrolls it under the hand."""
        self.js("for (let up = arguments[0].parentElement; up; up = up.parentElement) if (up.tagName === 'DETAILS') up.open = true;"
                "arguments[0].scrollIntoView({block: 'center'})", element)
        return element

    def touch(self, selector):
        element = self.bring(self.one(selector))
        until(element.is_displayed)
        element.click()

    def touch_tile(self, path, value):
        """The tile of this value; not again where it holds already."""
        tile = f'.choice[data-path="{path}"] [data-value="{value}"]'
        if self.one(tile).get_attribute("aria-pressed") != "true":
            self.touch(tile)

    def type(self, path, text):
        box = self.bring(self.one(f'input[data-path="{path}"]'))
        if box.get_attribute("data-kind") == "date":
            self.js("arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input', {bubbles: true}))", box, text)
            return
        box.click()
        box.send_keys(Keys.CONTROL, "a")
        box.send_keys(Keys.DELETE)
        box.send_keys(text)

    def put(self, path, value):
        """One attribute of a job, as a hand would: touched where it can be, else typed."""
        element, _, attribute = path.rpartition("@")
        if path == "@units":
            self.touch(f"#units-{value}")
        elif element.startswith("shaft/end") and attribute == "joint":
            side = "tractor" if "tractor" in element else "implement"
            if self.one(f'[data-joint="{side} {value}"]').get_attribute("aria-pressed") != "true":
                self.touch(f'[data-joint="{side} {value}"]')
        elif attribute == "reference":
            if self.all(f'.choice[data-path="{path}"]'):
                return self.touch_tile(path, value) if self.one(f'.choice[data-path="{path}"]').is_displayed() else None
            spot = f'[data-spot^="{path}"][data-spot$="{value}"]:not([hidden])'
            if self.all(spot):
                self.touch(spot)
        elif attribute == "features":
            for word in value.split():
                self.touch_tile(path, word)
        elif attribute == "series" and element == "shaft":
            self.touch_tile(path, value)
        elif self.all(f'.choice[data-path="{path}"] [data-value="{value}"]'):
            self.touch_tile(path, value)
        else:
            self.type(path, value)

    def type_job(self, xml):
        self.touch("#jobs > summary")
        self.touch("#new-job")
        root = ElementTree.fromstring(xml)
        listed = attributes_of(xml)
        first = ["@units", "shaft@series", "shaft@shape", "shaft@inner-tube"]
        listed.sort(key=lambda pair: (first.index(pair[0]) if pair[0] in first else 4, not pair[0].endswith("@joint")))
        if root.find("shaft").get("shape"):
            self.touch_tile("shaft@series", "")
        for number, fit in enumerate(root.findall("fit"), 1):
            if number > 1:
                self.touch('[data-value="measure"]')
            for kind in ("trailed", "mounted"):
                if fit.find(kind) is not None:
                    self.touch_tile(f"fit[{number}] way", kind)
        for _ in root.findall("for/other-tractor"):
            self.touch('[data-value="name"]')
        for path, value in listed:
            if value:
                self.put(path, value)

    def answer_open(self):
        """What the page asks and never supposes, answered as a file that does not say it is read: from the series' cross, no other tractor."""
        for path in self.open_questions():
            self.js("return import('/state.js').then((m) => m.put(arguments[0], arguments[1]))", path, "none" if path == "for@other-tractors" else self.cross())

    def open_questions(self):
        return self.js("return import('/next.js').then((m) => m.steps().filter((one) => one.must && !one.there).map((one) => one.path))"
                       ".then((paths) => import('/state.js').then((m) => paths.filter((one) => (one === 'for@other-tractors' || one.endsWith('@reference')) && !m.state.job.get(one))))")

    def cross(self):
        return self.js("return import('/state.js').then((m) => m.state.job.get('shaft/closed@reference') || (m.series() && m.series().wide_angle_reference))")

    def band(self):
        return self.one("#band").text

    def verdict(self):
        return self.js("return document.getElementById('band').dataset.verdict")

    def lengths(self):
        """What comes off, by letter, in millimetres; of what is not cut nothing."""
        return self.js("return Object.fromEntries([...document.querySelectorAll('#band .cut')].map((one) => [one.dataset.letter, Number(one.dataset.mm)]))")

    def settled(self):
        """The verdict, once the server answered what is on the page now."""
        return until(lambda: self.verdict())

    def job(self):
        return self.js("return import('/state.js').then((m) => m.state.job.text())")

    def complaints(self):
        return [entry["message"] for entry in self.driver.get_log("browser") if entry["level"] == "SEVERE" and "422" not in entry["message"]]

    def open_text(self, xml):
        """A job file, as if it were opened."""
        self.js("return Promise.all([import('/papers.js'), import('/drafts.js')]).then(([papers, drafts]) => { drafts.forget_number(); papers.open_job(arguments[0]); })", xml)
