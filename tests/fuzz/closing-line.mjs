/** A vitest reporter that adds up the cases all fuzz tests tried, in one closing line. */
export default class ClosingLine {
  onTestRunEnd(modules) {
    let cases = 0;
    let tests = 0;
    for (const module of modules) {
      for (const test of module.children.allTests('passed')) {
        const tried = test.meta().cases;
        if (tried === undefined) continue;
        cases += tried;
        tests++;
      }
    }
    if (tests) console.log(`Fuzz: ${cases.toLocaleString('en-US')} cases in ${tests} tests held.`);
  }
}
